@echo off
rem Starts Loftcoil with the Java beside it. Nothing else need be installed.
setlocal
set "LOFTCOIL_FROM=%CD%"
cd /d "%~dp0"
chcp 65001 >nul
runtime\bin\java.exe -XX:MinHeapSize=24m -XX:InitialHeapSize=64m -Xmx192m -XX:MaxNewSize=16m -XX:+UseSerialGC -XX:MinHeapFreeRatio=10 -XX:MaxHeapFreeRatio=25 -XX:-ShrinkHeapInSteps -XX:TieredStopAtLevel=1 -XX:+IgnoreUnrecognizedVMOptions -XX:+UnlockDiagnosticVMOptions -XX:ArchiveRelocationMode=0 -XX:SharedArchiveFile=app/loftcoil.jsa -Xlog:disable -Xlog:all=error:stderr -Dloftcoil.shared=app/loftcoil.jsa "-Dloftcoil.from=%LOFTCOIL_FROM%" -jar app/loftcoil.jar %*
if errorlevel 1 pause
endlocal
