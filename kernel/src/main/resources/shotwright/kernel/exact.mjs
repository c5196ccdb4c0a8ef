// Exact solids: the few dozen operations the trade needs, on shapes kept by number. Lengths in mm, angles in radians.
// Every operation takes and gives plain values only: numbers, strings, and typed arrays for anything long.
const shapes = new Map();
let oc, memory;
// begins anywhere, so that a number from an engine that has ended is not taken for a shape of this one
let last = Math.floor(Math.random() * 1e9);

const keep = shape => {
  if (!shape || shape.IsNull()) throw new Error('nothing came of it');
  shapes.set(++last, shape);
  return last;
};
const shape = number => {
  const s = shapes.get(number);
  if (!s) throw new Error(`no shape ${number}`);
  return s;
};
const point = (a, i = 0) => new oc.gp_Pnt(a[i], a[i + 1], a[i + 2]);
const direction = (a, i = 0) => new oc.gp_Dir(a[i], a[i + 1], a[i + 2]);
const vector = (a, i = 0) => new oc.gp_Vec(a[i], a[i + 1], a[i + 2]);
const xyz = p => [p.X(), p.Y(), p.Z()];

function* sub(s, kind, avoid) {
  const e = avoid ? new oc.TopExp_Explorer(s, kind, avoid) : new oc.TopExp_Explorer(s, kind);
  for (; e.More(); e.Next()) yield e.Current();
  e.delete();
}
const solidsOf = s => [...sub(s, 'TopAbs_SOLID')];
const facesOf = s => [...sub(s, 'TopAbs_FACE')].map(f => oc.TopoDS.Face(f));

function listOf(numbers) {
  const list = new oc.NCollection_List_TopoDS_Shape();
  for (const n of numbers) list.Append(shape(n));
  return list;
}

/** A boolean operation whose result is checked for errors and freed of edges inside faces. */
function built(operation) {
  operation.Build(new oc.Message_ProgressRange());
  if (!operation.IsDone() || operation.HasErrors()) throw new Error('the solids could not be combined');
  const result = operation.Shape();
  operation.delete();
  oc.BRepTools.RemoveInternals(result, false);
  return result;
}

/** Points nearer than `same` count as one. */
function combine(operation, bodies, tools, same) {
  operation.SetFuzzyValue(same);
  operation.SetArguments(listOf(bodies));
  operation.SetTools(listOf(tools));
  return new Int32Array(solidsOf(built(operation)).map(keep));
}

/** Line, arc and full circle pieces: x y z of both ends, for an arc also of a point between. */
function wire(path) {
  const make = new oc.BRepBuilderAPI_MakeWire();
  for (let i = 0; i < path.length;) {
    const arc = path[i++] === 1;
    let edge;
    if (arc) {
      const curve = new oc.GC_MakeArcOfCircle(point(path, i), point(path, i + 3), point(path, i + 6));
      edge = new oc.BRepBuilderAPI_MakeEdge(curve.Value());
      i += 9;
    } else {
      edge = new oc.BRepBuilderAPI_MakeEdge(point(path, i), point(path, i + 3));
      i += 6;
    }
    make.Add(edge.Edge());
  }
  if (!make.IsDone()) throw new Error('the outline does not hang together');
  return make.Wire();
}

/** Flat faces that share their edges: corners, then for each face its count of corners and their numbers. */
function flatFaces(corners, faces) {
  const vertices = [], edges = new Map(), made = [];
  const vertex = v => vertices[v] ??= new oc.BRepBuilderAPI_MakeVertex(point(corners, 3 * v)).Vertex();
  const edge = (v, w) => {
    const key = v < w ? `${v} ${w}` : `${w} ${v}`;
    if (!edges.has(key)) edges.set(key, new oc.BRepBuilderAPI_MakeEdge(vertex(v), vertex(w)).Edge());
    return edges.get(key);
  };
  for (let i = 0; i < faces.length;) {
    const n = faces[i++], make = new oc.BRepBuilderAPI_MakeWire();
    for (let k = 0; k < n; k++) make.Add(edge(faces[i + k], faces[i + (k + 1) % n]));
    i += n;
    made.push(new oc.BRepBuilderAPI_MakeFace(make.Wire(), true).Face());
  }
  return made;
}

/** Faces that touch as shells, turned alike. */
function shells(faces) {
  const sewing = new oc.BRepBuilderAPI_Sewing(1e-6, true, true, true, false);
  for (const f of faces) sewing.Add(f);
  sewing.Perform(new oc.Message_ProgressRange());
  return [...sub(sewing.SewedShape(), 'TopAbs_SHELL')];
}

/** The body inside a closed shell. */
function solidOf(shell) {
  const solid = new oc.BRepBuilderAPI_MakeSolid(oc.TopoDS.Shell(shell)).Solid(), volume = new oc.GProp_GProps();
  oc.BRepGProp.VolumeProperties(solid, volume, true, false, false);
  const inside = volume.Mass() < 0;
  volume.delete();
  return keep(inside ? solid.Reversed() : solid);
}

/** Numbers sent for each face. */
const FACE = 14;
const KINDS = {
  GeomAbs_Plane: 0, GeomAbs_Cylinder: 1, GeomAbs_Cone: 2, GeomAbs_Sphere: 3, GeomAbs_Torus: 4,
};

/** Centre, axis and radius of the circle in which a surface of revolution is cut at one height parameter. */
function ring(s, v) {
  const p = [0, 2, 4].map(k => xyz(s.EvalD0(k * Math.PI / 3, v)));
  const centre = [0, 1, 2].map(i => (p[0][i] + p[1][i] + p[2][i]) / 3);
  const a = p[0].map((x, i) => x - centre[i]), b = p[1].map((x, i) => x - centre[i]);
  const n = [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]], l = Math.hypot(...n);
  return { centre, radius: Math.hypot(...a), axis: n.map(x => x / l) };
}

/** Kind, orientation, area, radius, second radius or half angle, a point of the axis, its direction, centre of area. */
function face(f) {
  const s = new oc.BRepAdaptor_Surface(f, true), props = new oc.GProp_GProps();
  oc.BRepGProp.SurfaceProperties(f, props, 1e-4, false);
  const row = new Float64Array(FACE), kind = KINDS[s.GetType()] ?? 5;
  row.set([kind, f.Orientation() === 'TopAbs_REVERSED' ? -1 : 1, props.Mass()]);
  row.set(xyz(props.CentreOfMass()), 11);
  let axis = null;
  if (kind === 0) axis = s.Plane().Axis();
  if (kind === 1) { const c = s.Cylinder(); row[3] = c.Radius(); axis = c.Axis(); }
  if (kind === 2) {
    const v = s.LastVParameter(), wide = ring(s, v), on = ring(s, v + 1);
    const rise = [0, 1, 2].reduce((sum, i) => sum + (on.centre[i] - wide.centre[i]) * wide.axis[i], 0);
    row[3] = wide.radius;
    row[4] = Math.atan2(on.radius - wide.radius, Math.abs(rise)) * Math.sign(rise || 1);
    row.set(wide.centre, 5); row.set(wide.axis, 8);
  }
  if (kind === 3) { const c = s.Sphere(); row[3] = c.Radius(); row.set(xyz(c.Location()), 5); }
  if (kind === 4) {
    const outer = ring(s, 0), inner = ring(s, Math.PI);
    row[3] = (outer.radius + inner.radius) / 2; row[4] = (outer.radius - inner.radius) / 2;
    row.set(outer.centre, 5); row.set(outer.axis, 8);
  }
  if (axis) { row.set(xyz(axis.Location()), 5); row.set(xyz(axis.Direction()), 8); }
  s.delete(); props.delete();
  return row;
}

const operations = {
  readStep(bytes) {
    oc.FS.writeFile('/in.step', new Uint8Array(bytes.buffer, bytes.byteOffset, bytes.byteLength));
    const reader = new oc.STEPControl_Reader();
    try {
      const status = reader.ReadFile('/in.step');
      if (status !== 'IFSelect_RetDone') return [String(status), new Int32Array(0), new Int32Array(0)];
      reader.TransferRoots(new oc.Message_ProgressRange());
      const whole = reader.OneShape();
      if (!whole || whole.IsNull()) return ['empty', new Int32Array(0), new Int32Array(0)];
      const loose = [...sub(whole, 'TopAbs_SHELL', 'TopAbs_SOLID'), ...sub(whole, 'TopAbs_FACE', 'TopAbs_SHELL')];
      return ['done', new Int32Array(solidsOf(whole).map(keep)), new Int32Array(loose.map(keep))];
    } finally {
      reader.delete();
      oc.FS.unlink('/in.step');
    }
  },
  writeStep(numbers) {
    const writer = new oc.STEPControl_Writer();
    // the writer brings its own settings, so ours come after it
    oc.Interface_Static.SetCVal('write.step.schema', 'AP214IS');
    oc.Interface_Static.SetCVal('write.step.unit', 'MM');
    for (const n of numbers) writer.Transfer(shape(n), 'STEPControl_AsIs', true, new oc.Message_ProgressRange());
    if (writer.Write('/out.step') !== 'IFSelect_RetDone') throw new Error('STEP could not be written');
    const bytes = oc.FS.readFile('/out.step').slice();
    oc.FS.unlink('/out.step');
    writer.delete();
    return [bytes];
  },
  release(numbers) {
    for (const n of numbers) { shapes.get(n)?.delete(); shapes.delete(n); }
    return [];
  },
  /** Volume, area, centroid by adaptive integration over the exact surfaces. */
  measure(number, accuracy) {
    const v = new oc.GProp_GProps(), a = new oc.GProp_GProps();
    oc.BRepGProp.VolumeProperties(shape(number), v, accuracy, false, false);
    oc.BRepGProp.SurfaceProperties(shape(number), a, accuracy, false);
    const out = new Float64Array([v.Mass(), a.Mass(), ...xyz(v.CentreOfMass())]);
    v.delete(); a.delete();
    return [out];
  },
  volume(number, accuracy) {
    const v = new oc.GProp_GProps();
    oc.BRepGProp.VolumeProperties(shape(number), v, accuracy, false, false);
    const out = new Float64Array([v.Mass()]);
    v.delete();
    return [out];
  },
  box(number) {
    const b = new oc.Bnd_Box();
    oc.BRepBndLib.AddOptimal(shape(number), b, false, false);
    const out = new Float64Array([...xyz(b.CornerMin()), ...xyz(b.CornerMax())]);
    b.delete();
    return [out];
  },
  /** Diagonal of a box around the control points: fast, and never too small. */
  reach(number) {
    const b = new oc.Bnd_Box();
    oc.BRepBndLib.Add(shape(number), b, false);
    const low = xyz(b.CornerMin()), high = xyz(b.CornerMax());
    b.delete();
    return [new Float64Array([Math.hypot(...high.map((h, i) => h - low[i]))])];
  },
  /** Valid, solids, shells, faces, edges used by one face only. */
  check(number) {
    const s = shape(number), analyzer = new oc.BRepCheck_Analyzer(s, true, false, false);
    const uses = new Map();
    for (const e of sub(s, 'TopAbs_EDGE')) {
      if (oc.BRep_Tool.Degenerated(oc.TopoDS.Edge(e))) continue;
      const h = oc.ReplicadShapeHasher.HashCode(e, 2147483647), same = uses.get(h) ?? [];
      const known = same.find(k => k.edge.IsSame(e));
      if (known) known.count++;
      else same.push({ edge: e, count: 1 });
      uses.set(h, same);
    }
    let open = 0;
    for (const same of uses.values()) for (const k of same) if (k.count === 1) open++;
    const out = new Int32Array([
      analyzer.IsValid() ? 1 : 0, solidsOf(s).length, [...sub(s, 'TopAbs_SHELL')].length, facesOf(s).length, open,
    ]);
    analyzer.delete();
    return [out];
  },
  /** See face(). */
  faces(number) {
    const all = facesOf(shape(number)), out = new Float64Array(FACE * all.length);
    all.forEach((f, i) => out.set(face(f), FACE * i));
    return [out];
  },
  /** Corners, normals, corner numbers, and for each face its first index, count of indices. */
  mesh(number, deflection, angle) {
    const s = shape(number);
    oc.BRepTools.Clean(s, true);
    const data = oc.ReplicadMeshExtractor.extract(s, deflection, angle, false);
    const floats = (at, n) => new Float32Array(memory.buffer, at, n).slice();
    const ints = (at, n) => new Int32Array(memory.buffer, at, n).slice();
    const out = [
      floats(data.getVerticesPtr(), data.getVerticesSize()),
      floats(data.getNormalsPtr(), data.getNormalsSize()),
      ints(data.getTrianglesPtr(), data.getTrianglesSize()),
      ints(data.getFaceGroupsPtr(), data.getFaceGroupsSize()),
    ];
    data.delete();
    return out;
  },
  blockSolid(corners) {
    return [keep(new oc.BRepPrimAPI_MakeBox(point(corners), point(corners, 3)).Solid())];
  },
  cylinder(axis, radius, height) {
    const place = new oc.gp_Ax2(point(axis), direction(axis, 3));
    return [keep(new oc.BRepPrimAPI_MakeCylinder(place, radius, height).Solid())];
  },
  sphere(centre, radius) {
    return [keep(new oc.BRepPrimAPI_MakeSphere(point(centre), radius).Solid())];
  },
  /** A closed outline turned about an axis. */
  revolve(path, axis) {
    const made = new oc.BRepBuilderAPI_MakeFace(wire(path), true);
    return [keep(new oc.BRepPrimAPI_MakeRevol(made.Face(), new oc.gp_Ax1(point(axis), direction(axis, 3)), true).Shape())];
  },
  /** A closed flat outline pushed along a vector. */
  prism(path, along) {
    const made = new oc.BRepBuilderAPI_MakeFace(wire(path), true);
    return [keep(new oc.BRepPrimAPI_MakePrism(made.Face(), vector(along), false, true).Shape())];
  },
  /** A flat face inside a closed outline. */
  plate(path) {
    return [keep(new oc.BRepBuilderAPI_MakeFace(wire(path), true).Face())];
  },
  /** One solid of flat faces. */
  polyhedron(corners, faces) {
    const shell = shells(flatFaces(corners, faces))[0];
    if (!shell) throw new Error('the faces do not close');
    return [solidOf(shell)];
  },
  /** Pieces that share faces, as solids without those faces. */
  join(numbers) {
    const known = new Map();
    for (const n of numbers) for (const f of sub(shape(n), 'TopAbs_FACE')) {
      const h = oc.ReplicadShapeHasher.HashCode(f, 2147483647), same = known.get(h) ?? [], k = same.find(o => o.face.IsSame(f));
      if (k) k.count++;
      else same.push({ face: f, count: 1 });
      known.set(h, same);
    }
    const outer = [...known.values()].flat().filter(k => k.count === 1).map(k => k.face);
    return [new Int32Array(shells(outer).map(solidOf))];
  },
  /** An open sheet of flat faces, not turned alike. */
  sheet(corners, faces) {
    const builder = new oc.TopoDS_Builder(), all = new oc.TopoDS_Compound();
    builder.MakeCompound(all);
    for (const f of flatFaces(corners, faces)) builder.Add(all, f);
    return [keep(all)];
  },
  /** Neighbouring faces on one surface made one. */
  tidy(number) {
    const unify = new oc.ShapeUpgrade_UnifySameDomain(shape(number), true, true, false);
    unify.Build();
    return [keep(unify.Shape())];
  },
  /** Three rows of four: turn, uniform scale and shift. */
  transform(number, rows) {
    const t = new oc.gp_Trsf();
    t.SetValues(...rows);
    return [keep(new oc.BRepBuilderAPI_Transform(shape(number), t, true, false).Shape())];
  },
  cut: (bodies, tools, same) => [combine(new oc.BRepAlgoAPI_Cut(), bodies, tools, same)],
  common: (bodies, tools, same) => [combine(new oc.BRepAlgoAPI_Common(), bodies, tools, same)],
  fuse: (bodies, tools, same) => [combine(new oc.BRepAlgoAPI_Fuse(), bodies, tools, same)],
  split: (bodies, tools, same) => [combine(new oc.BRepAlgoAPI_Splitter(), bodies, tools, same)],
  /** Faces leaned about the line in which a plane across the draw cuts them: for each the angle, the draw, a point of the plane. */
  draft(number, faces, how) {
    const s = shape(number), all = facesOf(s), make = new oc.BRepOffsetAPI_DraftAngle(s);
    try {
      faces.forEach((f, i) => {
        const draw = direction(how, 7 * i + 1);
        make.Add(all[f], draw, how[7 * i], new oc.gp_Pln(point(how, 7 * i + 4), draw), true);
        if (!make.AddDone()) throw new Error('the face cannot be leaned');
      });
      make.Build(new oc.Message_ProgressRange());
      if (!make.IsDone()) throw new Error('the faces beside it leave no room');
      const leaned = make.Shape(), now = facesOf(leaned), moved = make.ModifiedFaces(), which = [];
      if (all.some((f, i) => !make.ModifiedShape(f).IsSame(now[i]))) throw new Error('the faces lost their order');
      for (; !moved.IsEmpty(); moved.RemoveFirst()) which.push(all.findIndex(f => f.IsSame(moved.First())));
      return [keep(leaned), new Int32Array(which)];
    } finally {
      make.delete();
    }
  },
  /** The body between two outlines, piece by piece straight from one to the other. */
  loft(low, high) {
    const make = new oc.BRepOffsetAPI_ThruSections(true, true, 1e-6);
    make.CheckCompatibility(false);
    make.AddWire(wire(low)); make.AddWire(wire(high));
    make.Build(new oc.Message_ProgressRange());
    const made = make.Shape();
    make.delete();
    return [keep(made)];
  },
  /** The edges through some points rounded with one radius, and what goes on from them without a kink. */
  round(number, radius, points) {
    const s = shape(number), make = new oc.BRepFilletAPI_MakeFillet(s);
    for (let i = 0; i < points.length; i += 3) {
      const spot = new oc.BRepBuilderAPI_MakeVertex(point(points, i)).Vertex();
      let nearest, least = 1e-3;
      for (const e of sub(s, 'TopAbs_EDGE')) {
        const d = new oc.BRepExtrema_DistShapeShape();
        d.LoadS1(spot); d.LoadS2(e);
        d.Perform(new oc.Message_ProgressRange());
        if (d.IsDone() && d.Value() < least) { least = d.Value(); nearest = oc.TopoDS.Edge(e); }
        d.delete();
      }
      if (!nearest) throw new Error('no edge runs through the place');
      make.Add(radius, nearest);
    }
    make.Build(new oc.Message_ProgressRange());
    if (!make.IsDone()) throw new Error('the edge could not be rounded');
    const made = make.Shape();
    make.delete();
    return [keep(solidsOf(made)[0])];
  },
};

function said(e) {
  if (typeof WebAssembly.Exception === 'function' && e instanceof WebAssembly.Exception) {
    return oc.getExceptionMessage(e).filter(Boolean).join(': ');
  }
  return e instanceof Error ? e.message : String(e);
}

function call(name, values) {
  const operation = operations[name];
  if (!operation) throw new Error(`no operation ${name}`);
  return operation(...values);
}

/** Starts the kernel from its own module and program bytes; at more than the given pages of 64 KiB it says so and is ended. */
export async function start(module, program, mostPages, full) {
  const grow = WebAssembly.Memory.prototype.grow;
  WebAssembly.Memory.prototype.grow = function (pages) {
    if (this.buffer.byteLength / 65536 + pages > mostPages) full(); // the kernel itself would try smaller and smaller pieces for minutes
    return grow.call(this, pages);
  };
  oc = await module({
    wasmBinary: program,
    locateFile: f => f,
    print() {},
    printErr() {},
    instantiateWasm(imports, done) {
      const compiled = new WebAssembly.Module(program), instance = new WebAssembly.Instance(compiled, imports);
      memory = Object.values(instance.exports).find(e => e instanceof WebAssembly.Memory);
      done(instance, compiled);
      return instance.exports;
    },
  });
}

// The other end of the wire: a count and a zero, then for each value its kind, its length, and its data filled up to eight bytes.
const INT = 1, DOUBLE = 2, TEXT = 3, BYTES = 4, INTS = 5, FLOATS = 6, DOUBLES = 7;
const padded = bytes => Math.ceil(bytes / 8) * 8;

function take(buffer) {
  const view = new DataView(buffer), values = [];
  let at = 8;
  for (let left = view.getInt32(0, true); left > 0; left--) {
    const kind = view.getInt32(at, true), length = view.getInt32(at + 4, true);
    at += 8;
    let bytes = length;
    if (kind === INT) { values.push(view.getInt32(at, true)); bytes = 8; }
    else if (kind === DOUBLE) { values.push(view.getFloat64(at, true)); bytes = 8; }
    else if (kind === TEXT) values.push(fromUtf8(new Uint8Array(buffer, at, length)));
    else if (kind === BYTES) values.push(new Uint8Array(buffer, at, length));
    else if (kind === INTS) { values.push(new Int32Array(buffer, at, length)); bytes = 4 * length; }
    else if (kind === FLOATS) { values.push(new Float32Array(buffer, at, length)); bytes = 4 * length; }
    else { values.push(new Float64Array(buffer, at, length)); bytes = 8 * length; }
    at += padded(bytes);
  }
  return values;
}

function give(values) {
  const parts = values.map(v => {
    if (typeof v === 'string') return [TEXT, toUtf8(v)];
    if (typeof v === 'number') return Number.isInteger(v) ? [INT, new Int32Array([v])] : [DOUBLE, new Float64Array([v])];
    if (v instanceof Uint8Array) return [BYTES, v];
    if (v instanceof Int32Array) return [INTS, v];
    if (v instanceof Float32Array) return [FLOATS, v];
    return [DOUBLES, v];
  });
  const buffer = new ArrayBuffer(parts.reduce((sum, [, a]) => sum + 8 + padded(a.byteLength), 8));
  const view = new DataView(buffer), bytes = new Uint8Array(buffer);
  view.setInt32(0, parts.length, true);
  let at = 8;
  for (const [kind, a] of parts) {
    view.setInt32(at, kind, true);
    view.setInt32(at + 4, a.length, true);
    bytes.set(new Uint8Array(a.buffer, a.byteOffset, a.byteLength), at + 8);
    at += 8 + padded(a.byteLength);
  }
  return buffer;
}

const fromUtf8 = bytes => decodeURIComponent(Array.from(bytes, b => '%' + b.toString(16).padStart(2, '0')).join(''));
const toUtf8 = text => Uint8Array.from(unescape(encodeURIComponent(text)), c => c.charCodeAt(0));

/** One message in, one out: "done" and the values; "failed" and a text; "broken" and a text when the kernel itself may be in disorder now. */
export function answer(buffer) {
  try {
    const [name, ...values] = take(buffer);
    return give(['done', ...call(name, values)]);
  } catch (e) {
    return give([e instanceof WebAssembly.RuntimeError || e instanceof RangeError ? 'broken' : 'failed', said(e)]);
  }
}
