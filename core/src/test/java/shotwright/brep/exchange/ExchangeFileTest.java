package shotwright.brep.exchange;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import shotwright.geom.Vec3;

/** The clear text encoding of ISO 10303-21, on a small file of our own: two knobs on a bar, in inches. */
class ExchangeFileTest {
    private static final String START = """
            ISO-10303-21;
            HEADER; /* a remark; with 'odd' signs */
            FILE_DESCRIPTION((''),'2;1');
            FILE_NAME('knob','',(''),(''),'','','');
            FILE_SCHEMA(('AUTOMOTIVE_DESIGN { 1 0 10303 214 1 1 1 1 }'));
            ENDSEC;
            DATA;
            """;
    private static final String BODY = """
            #1=PRODUCT('bar','bar''s own','',(#9));
            #2=PRODUCT_DEFINITION_FORMATION('','',#1);
            #3=PRODUCT_DEFINITION('d','',#2,$);
            #4=PRODUCT('kn\\X2\\00F6\\X0\\p','','',(#9));
            #5=PRODUCT_DEFINITION_FORMATION('','',#4);
            #6=PRODUCT_DEFINITION('d','',#5,*);
            #7=NEXT_ASSEMBLY_USAGE_OCCURRENCE('1','','',#3,#6,$);
            #8=NEXT_ASSEMBLY_USAGE_OCCURRENCE('2','','',
               #3,#6,$);
            #9=PRODUCT_CONTEXT('',#9,'mechanical');
            #20=(LENGTH_UNIT()NAMED_UNIT(*)SI_UNIT(.MILLI.,.METRE.));
            #21=MEASURE_WITH_UNIT(LENGTH_MEASURE(25.4),#20);
            #22=(CONVERSION_BASED_UNIT('INCH',#21)LENGTH_UNIT()NAMED_UNIT(#23));
            #23=DIMENSIONAL_EXPONENTS(1.,0.,0.,0.,0.,0.,0.);
            #24=DERIVED_UNIT_ELEMENT(#22,3.);
            #25=DERIVED_UNIT((#24));
            #30=(GEOMETRIC_REPRESENTATION_CONTEXT(3)GLOBAL_UNIT_ASSIGNED_CONTEXT((#22))REPRESENTATION_CONTEXT('',''));
            #31=PRODUCT_DEFINITION_SHAPE('','',#6);
            #32=PROPERTY_DEFINITION('geometric_validation_property','volume',#31);
            #33=MEASURE_REPRESENTATION_ITEM('volume measure',VOLUME_MEASURE(2.E0),#25);
            #34=REPRESENTATION('volume',(#33),#30);
            #35=PROPERTY_DEFINITION_REPRESENTATION(#32,#34);
            #36=PROPERTY_DEFINITION('geometric validation property','centroid',#31);
            #37=CARTESIAN_POINT('centre point',(1.,-2.,+.5));
            #38=REPRESENTATION('centroid',(#37),#30);
            #39=PROPERTY_DEFINITION_REPRESENTATION(#36,#38);
            """;
    private static final String END = "ENDSEC;\nEND-ISO-10303-21;\n";

    private static ExchangeFile read(String text) {
        return ExchangeFile.read(text.getBytes(ISO_8859_1));
    }

    @Test
    void productsAndPlaces() {
        Products p = Products.of(read(START + BODY + END));
        assertThat(p.roots()).extracting(Products.Product::name).containsExactly("bar");
        assertThat(p.leaves()).extracting(Products.Product::name).containsExactly("knöp", "knöp");
        assertThat(p.namesFor(2)).containsExactly("knöp", "knöp");
        assertThat(p.namesFor(3)).containsOnly("");
    }

    @Test
    void vouchedSizesTurnToMillimetres() {
        Products.Vouched v =
                Products.of(read(START + BODY + END)).leaves().getFirst().vouched();
        assertThat(v.volumeMm3()).isCloseTo(2 * 16387.064, within(1e-9));
        assertThat(v.areaMm2()).isNull();
        Vec3 centroid = Objects.requireNonNull(v.centroidMm());
        assertThat(centroid.distance(new Vec3(25.4, -50.8, 12.7))).isLessThan(1e-12);
    }

    @Test
    void unitsAndSchema() {
        ExchangeFile f = read(START + BODY + END);
        assertThat(new LengthUnits(f).usedMm()).containsExactly(25.4);
        assertThat(f.schemas()).isEqualTo(List.of("AUTOMOTIVE_DESIGN"));
        assertThat(f.dangling()).isEmpty();
    }

    @Test
    void aCutFileIsSaidWithItsLine() {
        String whole = START + BODY + END;
        String cut = whole.substring(0, whole.indexOf("#21="));
        assertThatThrownBy(() -> read(cut)).isInstanceOfSatisfying(ExchangeFault.class, f -> {
            assertThat(f.line()).isEqualTo(cut.lines().count() + 1);
            assertThat(f).hasMessageContaining("cut off");
        });
    }

    @Test
    void aMissingEntityIsSaidWithItsLine() {
        ExchangeFile f = read(START + "#1=LINE('',#77,#1);\n" + END);
        assertThat(f.dangling()).hasValueSatisfying(d -> {
            assertThat(d.missing()).isEqualTo(77);
            assertThat(d.from().line()).isEqualTo(8);
        });
    }

    @Test
    void brokenSyntaxIsSaid() {
        assertThatThrownBy(() -> read(START + "#1=LINE('',1.2.3);\n" + END)).hasMessageContaining("1.2.3");
        assertThatThrownBy(() -> read(START + "#1=LINE('a;\n" + END)).hasMessageContaining("not closed");
        assertThatThrownBy(() -> read(START + "#1=LINE();\n#1=LINE();\n" + END)).hasMessageContaining("twice");
        assertThatThrownBy(() -> read(START + "#1=LINE(" + "(".repeat(5000))).hasMessageContaining("deep");
        assertThatThrownBy(() -> read("ISO-10303-21;\nHEADER;\nENDSEC;\n" + END.substring(8)))
                .hasMessageContaining("no data");
    }
}
