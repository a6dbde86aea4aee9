@echo off
rem Starts Dryfit. JAVA_HOME says which Java, else the one on the path; it must be 17 or newer.
setlocal
set java=java
if defined JAVA_HOME set java="%JAVA_HOME%\bin\java"
set tiers=-XX:TieredStopAtLevel=1
for %%c in (window sweep jigs assemble compare boards) do if "%~1"=="%%c" set tiers=
%java% %tiers% -Xshare:auto "-XX:SharedArchiveFile=%~dp0lib\classes.jsa" -Xlog:disable -jar "%~dp0lib\dryfit.jar" %*
