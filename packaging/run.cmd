@echo off
rem Not run here: reviewed line by line only, 2026-11-27.
rem Starts Evenfall on Windows. In the source tree it is built first when it is missing or older than its sources; in
rem the portable folder, where this file is start-windows.cmd, it is only started. Does what packaging/run does.
rem   packaging\run.cmd           the wizard
rem   packaging\run.cmd --help    the commands
rem Java 17 or later from JAVA_HOME, else from the path; Maven only to build.
setlocal EnableExtensions DisableDelayedExpansion
title Evenfall
set "here=%~dp0"
set "own_flags=%here%java-flags"

rem --- Java and its version, from the file that comes with it; only without one, Java itself is asked
set "java="
if not defined JAVA_HOME goto from_path
if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
:from_path
if not defined java for %%J in (java.exe) do set "java=%%~$PATH:J"
if not defined java goto no_java
for %%J in ("%java%\..\..") do set "java_home=%%~fJ"
set "version="
set "build="
if not exist "%java_home%\release" goto ask_java
for /f "usebackq tokens=1,* delims==" %%K in ("%java_home%\release") do (
    if "%%K"=="JAVA_VERSION" set "version=%%~L"
    if "%%K"=="JAVA_RUNTIME_VERSION" set "build=%%~L"
)
:ask_java
if defined version goto have_version
set "answer=%TEMP%\evenfall-java-%RANDOM%.txt"
"%java%" -version >"%answer%" 2>&1
for /f "usebackq tokens=2,3" %%U in ("%answer%") do if "%%U"=="version" set "version=%%~V"
del "%answer%"
if not defined version goto no_java
:have_version
if not defined build set "build=%version%"
for /f "delims=.-+_" %%M in ("%version%") do set "major=%%M"
if %major% LSS 17 goto no_java

rem --- the portable folder has the program beside this file, the source tree in target
if not exist "%here%evenfall.jar" goto source_tree
set "jar=%here%evenfall.jar"
set "archive=%here%lib\windows-x64\evenfall.jsa"
set "class_path=%here%lib\windows-x64\*;%jar%"
goto have_jar

:source_tree
for %%H in ("%here%..") do set "home=%%~fH"
set "jar=%home%\target\evenfall.jar"
set "archive=%home%\target\evenfall.jsa"
set "class_path=%jar%"
if not exist "%jar%" goto build
pushd "%home%"
powershell -NoProfile -Command "$jar = Get-Item target\evenfall.jar; $all = @(Get-Item pom.xml) + @(Get-ChildItem src\main,demo -Recurse -File); exit [int][bool]($all | Where-Object { $_.LastWriteTime -gt $jar.LastWriteTime })"
set "newer=%errorlevel%"
popd
if "%newer%"=="0" goto have_jar
:build
where /q mvn
if errorlevel 1 goto no_maven
>&2 echo Building Evenfall; the first time takes a few minutes.
pushd "%home%"
call mvn -B -q -ntp -DskipTests package 1>&2
set "built=%errorlevel%"
popd
if not "%built%"=="0" goto not_built
rem newer than its sources, even where nothing had to be packed anew
pushd "%home%\target"
copy /b evenfall.jar+,, >nul
popd

:have_jar
rem --- the archive of loaded classes fits one Java and one place; its stamp says which, in the code page of this console
for %%F in ("%jar%") do set "fits=%jar% %%~zF %%~tF %java_home% %build%"
set "stamp="
if exist "%archive%.stamp" set /p stamp=<"%archive%.stamp"
if not "%stamp%"=="%fits%" goto make_archive
if exist "%archive%" goto have_archive
:make_archive
if "%stamp%"=="none %fits%" goto without_archive
2>nul (>"%archive%.part" echo.)
if not exist "%archive%.part" goto without_archive
del "%archive%.part"
>&2 echo Getting ready for quick starts; only this once.
"%java%" "@%own_flags%" -cp "%class_path%" org.evenfall.ClassArchive "%archive%" "%fits%" >nul 2>&1 <nul
if errorlevel 1 goto no_archive
<nul set /p "=%fits%" >"%archive%.stamp"
goto have_archive
:no_archive
<nul set /p "=none %fits%" >"%archive%.stamp"
:without_archive
set "archive="

:have_archive
rem --- the drawing library reaches memory in a way that later Javas warn of
set "flags="
if %major% GEQ 23 set "flags=--sun-misc-unsafe-memory-access=allow"
rem a stream runs long enough for the better compiler
set "quick="
rem a thousand cards in one call need no more
if "%~1"=="card" set "quick=-Xmx256m"
set "asked=%~1"
:look
if "%~1"=="" goto looked
if "%~1"=="--stream" set "quick=-XX:TieredStopAtLevel=4"
shift /1
goto look
:looked
if not defined archive goto run_plain
"%java%" "@%own_flags%" %flags% %quick% "-XX:SharedArchiveFile=%archive%" -Xlog:disable -cp "%class_path%" org.evenfall.Main %*
goto ran
:run_plain
"%java%" "@%own_flags%" %flags% %quick% -cp "%class_path%" org.evenfall.Main %*
:ran
set "code=%errorlevel%"
rem started by a double click: what went wrong can be read before the console closes
if not "%code%"=="0" if not defined asked pause
exit /b %code%

:no_java
>&2 echo Evenfall needs Java 17 or later. Install it, or set JAVA_HOME.
goto stop
:no_maven
>&2 echo Evenfall is built with Maven. Install it, or unpack a built Evenfall.
goto stop
:not_built
>&2 echo Evenfall could not be built.
:stop
if "%~1"=="" pause
exit /b 2
