#!/usr/bin/env bash
# Restores, compiles and builds the packets of all jobs in jobs/ into out/. Other tasks: ./build.sh --target=Check
set -euo pipefail
cd "$(dirname "$0")"
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1
dotnet tool restore --verbosity quiet
exec dotnet cake build/build.cake --settings_enablescriptcache=true "$@"
