@echo off
rem Starts Loftcoil with the Java beside it. Nothing else need be installed.
setlocal DisableDelayedExpansion
rem Java reads this from the environment: as an argument it would lose letters that the system's code page has not, and a drive's own
rem folder, which ends with a backslash, would swallow the quotation mark behind it.
set "LOFTCOIL_FROM=%CD%"
rem A folder on another computer is given a letter, which cd cannot do.
pushd "%~dp0" || goto nowhere
if not exist "runtime\bin\java.exe" goto incomplete
chcp 65001 >nul
runtime\bin\java.exe -XX:MinHeapSize=24m -XX:InitialHeapSize=64m -Xmx192m -XX:MaxNewSize=16m -XX:+UseSerialGC -XX:MinHeapFreeRatio=10 -XX:MaxHeapFreeRatio=25 -XX:-ShrinkHeapInSteps -XX:TieredStopAtLevel=1 -XX:+IgnoreUnrecognizedVMOptions -XX:+UnlockDiagnosticVMOptions -XX:ArchiveRelocationMode=0 -XX:SharedArchiveFile=app/loftcoil.jsa -Xlog:disable -Xlog:all=error:stderr -Dloftcoil.shared=app/loftcoil.jsa -jar app/loftcoil.jar %*
set "LOFTCOIL_ENDED=%ERRORLEVEL%"
popd
if not "%LOFTCOIL_ENDED%"=="0" pause
exit /b %LOFTCOIL_ENDED%

:incomplete
echo runtime\bin\java.exe is not in "%CD%"; allowed: the whole folder as it was unpacked 1>&2
popd
:nowhere
pause
exit /b 2
