@echo off
rem Starts Lapmark with the flags of the launcher for POSIX shells, without an archive of classes.
rem LAPMARK_JAVA_OPTIONS are given to Java, after those from here.
setlocal
set "java="
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
if not defined java for %%F in (java.exe) do set "java=%%~$PATH:F"
if not defined java echo lapmark: there is no Java; install a JDK 17 or set JAVA_HOME 1>&2
if not defined java exit /b 3
"%java%" -Xshare:auto -Xlog:disable -XX:TieredStopAtLevel=1 -XX:+UseSerialGC %LAPMARK_JAVA_OPTIONS% -jar "%~dp0lapmark.jar" %*
exit /b %ERRORLEVEL%
