@echo off
rem Runs Hot Idle, as the launcher for other systems beside it does; not tried on Windows yet. In a checkout it is built first where it
rem is not built, or where sources are newer. The archive of loaded classes beside the jar is made at the first start.
setlocal
set "ROOT=%~dp0.."
set "JAVA=java"
if exist "%ROOT%\lib\runtime\bin\java.exe" set "JAVA=%ROOT%\lib\runtime\bin\java.exe" & goto jar
if not defined JAVA_HOME goto jar
set "JAVA=%JAVA_HOME%\bin\java.exe"
if exist "%JAVA%" goto jar
echo hotidle: JAVA_HOME is %JAVA_HOME%, and there is no bin\java.exe in it 1>&2
echo mend: unset JAVA_HOME, or let it name the folder of a JDK 17 or newer 1>&2
exit /b 2

:jar
set "JAR=%ROOT%\lib\hotidle.jar"
if exist "%JAR%" goto archive
set "JAR=%~dp0target\hotidle.jar"
if not exist "%JAR%" goto build
powershell -NoProfile -Command "$jar = (Get-Item '%JAR%').LastWriteTime; $new = Get-ChildItem -Recurse -File '%ROOT%\solver\src\main','%ROOT%\circuits\src\main','%ROOT%\circuits\library','%ROOT%\plots\src\main','%ROOT%\cli\src\main','%ROOT%\pom.xml' | Where-Object { $_.LastWriteTime -gt $jar }; if ($new) { exit 1 }"
if not errorlevel 1 goto archive

:build
echo building Hot Idle, once, one to two minutes ... 1>&2
pushd "%ROOT%"
call mvn -B -q -DskipTests -Dspotless.check.skip package 1>&2
if errorlevel 1 popd & exit /b 70
popd
del "%JAR:.jar=.jsa%" 2>nul

:archive
rem Java itself passes over an archive that was made of another jar or by another Java
set "ARCHIVE=%JAR:.jar=.jsa%"
if exist "%ARCHIVE%" goto run
"%JAVA%" "-XX:DumpLoadedClassList=%ARCHIVE%.list" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Djava.awt.headless=true -cp "%JAR%" hotidle.cli.Rehearsal >nul 2>&1
"%JAVA%" -Xshare:dump "-XX:SharedClassListFile=%ARCHIVE%.list" "-XX:SharedArchiveFile=%ARCHIVE%" -cp "%JAR%" >nul 2>&1
del "%ARCHIVE%.list" 2>nul

:run
"%JAVA%" "-XX:SharedArchiveFile=%ARCHIVE%" -Xshare:auto -Xlog:disable -Xlog:all=error:stderr -XX:+UseSerialGC -XX:-UsePerfData -Djava.awt.headless=true -Djdk.console=java.base -jar "%JAR%" %*
exit /b %ERRORLEVEL%
