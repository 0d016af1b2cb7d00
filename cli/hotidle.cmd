@echo off
rem Runs Hot Idle; builds it first where it is not built, or where sources are newer.
setlocal
set "ROOT=%~dp0.."
set "JAR=%~dp0target\hotidle.jar"
set "BUILD="
if not exist "%JAR%" set "BUILD=1"
if not defined BUILD (
  powershell -NoProfile -Command "$jar = (Get-Item '%JAR%').LastWriteTime; $new = Get-ChildItem -Recurse -File '%ROOT%\solver\src\main','%ROOT%\circuits\src\main','%ROOT%\circuits\library','%ROOT%\plots\src\main','%ROOT%\cli\src\main','%ROOT%\pom.xml' | Where-Object { $_.LastWriteTime -gt $jar }; if ($new) { exit 1 }"
  if errorlevel 1 set "BUILD=1"
)
if defined BUILD (
  echo building Hot Idle, once, one to two minutes ... 1>&2
  pushd "%ROOT%"
  call mvn -B -q -DskipTests -Dspotless.check.skip package 1>&2
  if errorlevel 1 (popd & exit /b 70)
  popd
)
java -Djava.awt.headless=true -jar "%JAR%" %*
exit /b %ERRORLEVEL%
