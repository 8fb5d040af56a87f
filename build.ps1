# Restores, compiles and builds the packets of all jobs in jobs/ into out/. Other tasks: ./build.ps1 --target=Check
$ErrorActionPreference = 'Stop'
Set-Location $PSScriptRoot
$env:DOTNET_CLI_TELEMETRY_OPTOUT = 1
$env:DOTNET_NOLOGO = 1
dotnet tool restore --verbosity quiet
dotnet cake build/build.cake --settings_enablescriptcache=true @args
exit $LASTEXITCODE
