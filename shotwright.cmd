@echo off
rem Starts Shotwright on Windows: finds a JDK 25, builds what is missing or older than its sources, then runs the command.
setlocal enabledelayedexpansion
set "HERE=%~dp0"
set "FOUND="
call :try "%JAVA_HOME%"
if not defined FOUND for /f "delims=" %%j in ('where javac 2^>nul') do if not defined FOUND for %%k in ("%%~dpj..") do call :try "%%~fk"
if not defined FOUND for /d %%j in ("%ProgramFiles%\Java\*" "%ProgramFiles%\Eclipse Adoptium\*" "%ProgramFiles%\Microsoft\jdk*" "%USERPROFILE%\.jdks\*") do if not defined FOUND call :try "%%~j"
if not defined FOUND (
  echo Shotwright needs a Java Development Kit 25 or newer and found none. Install one, or set JAVA_HOME to it. 1>&2
  exit /b 2
)
set "JAVA_HOME=%FOUND%"
set "JAR=%HERE%desk\target\shotwright-desk.jar"
set "CACHE=%HERE%desk\target\shotwright.aot"
set "OPTIONS=-XX:+UseParallelGC -Xlog:cds=off -Xlog:aot=off -Djava.awt.headless=true -Djdk.reflect.useNativeAccessorOnly=true --enable-native-access=ALL-UNNAMED"
set "STALE="
if not exist "%JAR%" set STALE=1
if not exist "%HERE%desk\target\lib" set STALE=1
if not defined STALE (
  for /f %%n in ('powershell -NoProfile -Command "$t=(Get-Item -LiteralPath $env:JAR).LastWriteTime; (Get-ChildItem -Recurse -File -LiteralPath ($env:HERE+'core\src\main'),($env:HERE+'kernel\src\main'),($env:HERE+'desk\src\main') | Where-Object { $_.LastWriteTime -gt $t } | Measure-Object).Count"') do if not "%%n"=="0" set STALE=1
)
if defined STALE (
  echo Building Shotwright ^(first start, or its sources changed^). This takes a minute or two the first time. 1>&2
  pushd "%HERE%"
  call mvn -q -B -pl core,kernel,desk package -Dmaven.test.skip=true -Dspotless.skip=true 1>&2
  if errorlevel 1 (
    popd
    echo The build failed. 1>&2
    exit /b 2
  )
  popd
  rem Keeps what one run has loaded and found hot, for later ones to start with; without it they only start slower.
  "%JAVA_HOME%\bin\java" %OPTIONS% -XX:AOTCacheOutput="%CACHE%.new" -jar "%JAR%" review "%HERE%examples\parts\tension-knob.step" >nul 2>nul && move /y "%CACHE%.new" "%CACHE%" >nul
)
"%JAVA_HOME%\bin\java" %OPTIONS% -XX:AOTCache="%CACHE%" %SHOTWRIGHT_JAVA_OPTS% -jar "%JAR%" %*
exit /b %errorlevel%

:try
if "%~1"=="" exit /b
if not exist "%~1\bin\javac.exe" exit /b
if not exist "%~1\release" exit /b
for /f "tokens=2 delims==" %%v in ('findstr /b "JAVA_VERSION=" "%~1\release"') do (
  set "V=%%~v"
  for /f "tokens=1 delims=." %%m in ("!V!") do if %%m geq 25 set "FOUND=%~1"
)
exit /b
