@echo off
rem Starts Dryfit. JAVA_HOME says which Java, else the one on the path; it must be 17 or newer.
setlocal
set java=java
for %%j in (java.exe) do set "home=%%~dp$PATH:j.."
if defined JAVA_HOME set "home=%JAVA_HOME%"
if defined JAVA_HOME set java="%JAVA_HOME%\bin\java"
set flags=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xmn100m
set long=-Xmn150m -XX:Tier4InvocationThreshold=50000 -XX:Tier4MinInvocationThreshold=6000
set long=%long% -XX:Tier4CompileThreshold=150000 -XX:Tier4BackEdgeThreshold=400000
for %%c in (window sweep jigs assemble compare boards) do if "%~1"=="%%c" set flags=%long%
set classes=classes
if "%~1"=="window" set classes=window
rem Only the Java that kept the classes can use them, and only where it did; else it would have none at all, not even its own.
set kept=
set place=
if exist "%~dp0lib\classes.place" set /p place=<"%~dp0lib\classes.place"
fc /b "%home%\release" "%~dp0lib\classes.release" >nul 2>nul && if "%place%"=="%~dp0lib" set kept="-XX:SharedArchiveFile=%~dp0lib\%classes%.jsa"
%java% %flags% -XX:-UsePerfData -Xshare:auto %kept% -Xlog:disable -jar "%~dp0lib\dryfit.jar" %*
