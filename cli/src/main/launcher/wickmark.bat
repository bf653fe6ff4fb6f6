@echo off
rem Starts Wickmark with the Java of the package, of JAVA_HOME or of the PATH, in this order.
rem WICKMARK_JAVA_OPTIONS holds further options for Java, for instance -Xmx2g for very large scans.
setlocal
set "WICKMARK_HOME=%~dp0.."
set "WICKMARK_JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "WICKMARK_JAVA=%JAVA_HOME%\bin\java.exe"
if exist "%WICKMARK_HOME%\runtime\bin\java.exe" set "WICKMARK_JAVA=%WICKMARK_HOME%\runtime\bin\java.exe"
"%WICKMARK_JAVA%" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xshare:auto -XX:+UnlockDiagnosticVMOptions -XX:+IgnoreUnrecognizedVMOptions -XX:ArchiveRelocationMode=0 -Xmx1g -Xms32m -XX:MaxNewSize=16m -XX:MinHeapFreeRatio=15 -XX:MaxHeapFreeRatio=40 -XX:Tier3BackEdgeThreshold=10000 -Dfile.encoding=UTF-8 -Djava.awt.headless=true %WICKMARK_JAVA_OPTIONS% -cp "%WICKMARK_HOME%\lib\wickmark.jar" wickmark.cli.Wickmark %*
exit /b %ERRORLEVEL%
