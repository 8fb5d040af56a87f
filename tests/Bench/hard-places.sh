#!/usr/bin/env bash
# Kills, two runs at once, full disks, read-only places and settings of the machine: finished packets stay whole, the message says what
# happened, and the next run heals. Prints a table and ends with 1 when anything fails.
#   tests/Bench/hard-places.sh [kills] [pairs]        100 and 20 when absent
# Needs the built program (./build.sh). The full disk and the immutable file need root; without it they are named as skipped.
set -u
cd "$(dirname "$0")/../.."
kills=${1:-100}
pairs=${2:-20}
program=src/InstallPacket.Cli/bin/Release/net10.0/installpacket.dll
[ -f "$program" ] || { echo "build the program first: ./build.sh"; exit 2; }
program=$PWD/$program
work=$(mktemp -d)
failed=0
mounted=""
trap 'for m in $mounted; do umount "$m" 2>/dev/null; done; chattr -R -i "$work" 2>/dev/null; rm -rf "$work"' EXIT

run() { dotnet "$program" build --jobs "$jobs" --out "$@" 2>"$work/err" >"$work/said"; }
row() { printf '| %s | %s | %s |\n' "$1" "$2" "$3"; [ "$2" = holds ] || [ "$2" = skipped ] || failed=1; }
check() { if [ "$2" = 0 ]; then row "$1" holds "$3"; else row "$1" FAILS "$3"; fi; }

# Every folder with a packet.json has each file of it with its hash. Prints what is not so.
whole() {
    local folder
    for folder in "$1"/*/; do
        [ "$folder" = "$1/fonts/" ] || [ "$folder" = "$1/*/" ] && continue
        if [ ! -f "$folder/packet.json" ]; then echo "$folder has no packet.json"; continue; fi
        # One entry a file: path, size and hash on lines of their own.
        sed -n 's/^ *"path": "\(.*\)",$/\1/p; s/^ *"sha256": "\(.*\)"$/\1/p' "$folder/packet.json" | paste -d' ' - - \
            | while read -r path sum; do echo "$sum  $path"; done >"$work/manifest"
        [ -s "$work/manifest" ] || echo "$folder lists no file"
        (cd "$folder" && sha256sum --quiet -c "$work/manifest" 2>&1 | sed "s|^|$folder |")
    done
}

# What is in a folder, without the notes of the program for itself.
sums() { (cd "$1" && find . -type f ! -path './.installpacket*' -print0 | sort -z | xargs -0 sha256sum); }

jobs=$PWD/jobs
echo "| place | result | what was seen |"
echo "|---|---|---|"
run "$work/clean" || { cat "$work/err"; exit 1; }
sums "$work/clean" >"$work/want"

# Kills. The pause before each is drawn from the time between the first file written and the end of a build.
kill_builds() {
    local out=$work/killed broken=0 killed=0 writing=0 half=0 unhealed=0 i pid
    RANDOM=7
    for ((i = 0; i < kills; i++)); do
        # Every other time over packets that stand, as the replacement of an old packet has two renames of its own.
        [ $((i % 2)) = 0 ] && rm -rf "$out"
        dotnet "$program" build --jobs "$jobs" --out "$out" --force >/dev/null 2>&1 &
        pid=$!
        for ((w = 0; w < 2000; w++)); do
            [ -d "$out/.installpacket-work/new" ] && break
            kill -0 $pid 2>/dev/null || break
            sleep 0.002
        done
        sleep "0.$(printf '%03d' $((RANDOM % 800)))"
        [ -d "$out/.installpacket-work" ] && writing=$((writing + 1))
        kill -9 $pid 2>/dev/null && killed=$((killed + 1))
        wait $pid 2>/dev/null
        [ -d "$out/.installpacket-work/new" ] && half=$((half + 1))
        if [ -d "$out" ] && [ -n "$(whole "$out" | tee -a "$work/broken")" ]; then broken=$((broken + 1)); fi
        run "$out" || unhealed=$((unhealed + 1))
        sums "$out" >"$work/have"
        cmp -s "$work/want" "$work/have" && [ ! -e "$out/.installpacket-work" ] || unhealed=$((unhealed + 1))
    done
    check "kill -9 in the write phase, $kills times" $((broken + unhealed)) \
        "$killed killed alive, $writing while writing, $half with a half packet left in the work folder; $broken with a packet that is not whole; $unhealed not healed by the next run"
}

two_at_once() {
    local out=$work/pair bad=0 i a b
    for ((i = 0; i < pairs; i++)); do
        rm -rf "$out"
        dotnet "$program" build --jobs "$jobs" --out "$out" --force >/dev/null 2>&1 & a=$!
        dotnet "$program" build --jobs "$jobs" --out "$out" --force >/dev/null 2>&1 & b=$!
        wait $a || bad=$((bad + 1))
        wait $b || bad=$((bad + 1))
        sums "$out" >"$work/have"
        cmp -s "$work/want" "$work/have" || bad=$((bad + 1))
    done
    check "two builds at once, $pairs times" $bad "$bad runs that failed or left other bytes"
}

# A small disk fills up: the run says so, finished packets are whole, and with room the next run heals.
full_disk() {
    local size=$1 disk=$work/disk code bad=0 found
    if [ "$(id -u)" != 0 ] || ! { mkdir -p "$disk" && mount -t tmpfs -o size="$size" none "$disk" 2>/dev/null; }; then
        row "disk of $size" skipped "needs root and the right to mount"
        return
    fi
    mounted="$disk"
    run "$disk/out"
    code=$?
    [ $code = 1 ] || bad=1
    grep -q "the disk is full; make room and run again" "$work/err" || bad=1
    [ -d "$disk/out" ] && [ -n "$(whole "$disk/out" | tee -a "$work/broken")" ] && bad=1
    found=$(find "$disk/out" -name packet.json -not -path '*/.installpacket-work/*' | wc -l)
    mount -o remount,size=64m "$disk"
    run "$disk/out" || bad=1
    sums "$disk/out" >"$work/have"
    cmp -s "$work/want" "$work/have" || bad=1
    check "disk of $size" $bad "exit $code, $found packets finished and whole; with room the next run is compared with a clean build"
    umount "$disk" && mounted=""
}

# Runs as a user without rights when this is root; the rights of root would pass every door.
as_nobody() {
    if [ "$(id -u)" = 0 ]; then setpriv --reuid 65534 --regid 65534 --clear-groups env HOME="$work" "$@"; else "$@"; fi
}

refused() { # name, output folder, what the message must say
    local code bad=0
    as_nobody dotnet "$program" build --jobs "$jobs" --out "$2" >"$work/said" 2>"$work/err"
    code=$?
    [ $code = 1 ] || bad=1
    grep -q "$3" "$work/err" || bad=1
    grep -qE "bug in the program|   at " "$work/err" && bad=1
    check "$1" $bad "exit $code: $(head -c 160 "$work/err" | head -1 | sed "s|$work|...|g")"
}

bad_places() {
    chmod 755 "$work"
    mkdir "$work/locked" && chmod 555 "$work/locked"
    touch "$work/err" "$work/said"
    refused "folder for the packets may not be made" "$work/locked/out" "permissions of the folder"
    refused "output folder is read-only and empty" "$work/locked" "permissions of the folder"
    cp -r "$work/clean" "$work/read-only"
    [ "$(id -u)" = 0 ] && chown -R 65534 "$work/read-only"
    rm "$work/read-only/alder-lane/crew.md"
    chmod -R a-w "$work/read-only"
    refused "output folder with packets is read-only" "$work/read-only" "permissions of the folder"
    chmod -R u+w "$work/read-only"
    as_nobody dotnet "$program" build --jobs "$jobs" --out "$work/read-only" >"$work/said" 2>"$work/err"
    sums "$work/read-only" >"$work/have"
    cmp -s "$work/want" "$work/have"
    check "the same with rights again" $? "the packet with a lost file is written again"
    echo mine >"$work/file"
    refused "a file in the place of the output folder" "$work/file" "is a file; --out names a folder"
    mkdir "$work/letters" && echo mine >"$work/letters/a.txt"
    refused "a folder of somebody else" "$work/letters" "it is left alone"
}

# Linux lets a file that is open be replaced. A file that may not be replaced stands for one that is held.
held_file() {
    local out=$work/held code bad=0
    cp -r "$work/clean" "$out"
    echo "# x" >>"$out/alder-lane/crew.md"
    if [ "$(id -u)" != 0 ] || ! chattr +i "$out/alder-lane/crew.md" 2>/dev/null; then
        row "a file of one packet may not be replaced" skipped "needs root and a file system with immutable files"
    else
        run "$out" --force
        code=$?
        [ $code = 1 ] || bad=1
        grep -q "alder-lane: the packet could not be written" "$work/err" || bad=1
        grep -q "quay-loft *planned" "$work/said" || bad=1
        chattr -i "$out/alder-lane/crew.md"
        chattr -R -i "$out"
        run "$out"
        sums "$out" >"$work/have"
        cmp -s "$work/want" "$work/have" || bad=1
        check "a file of one packet may not be replaced" $bad "exit $code, the other packets are written; the next run heals"
    fi
    rm -rf "$out"
    cp -r "$work/clean" "$out"
    if [ "$(id -u)" != 0 ] || ! mount --bind "$out/alder-lane" "$out/alder-lane" 2>/dev/null; then
        row "a packet folder is in use" skipped "needs root and the right to mount"
        return
    fi
    mounted="$out/alder-lane"
    bad=0
    run "$out" --force
    code=$?
    [ $code = 1 ] || bad=1
    grep -q "alder-lane: the packet could not be written" "$work/err" || bad=1
    grep -q "quay-loft *planned" "$work/said" || bad=1
    [ -z "$(whole "$out" | tee -a "$work/broken")" ] || bad=1
    umount "$out/alder-lane" && mounted=""
    run "$out"
    sums "$out" >"$work/have"
    cmp -s "$work/want" "$work/have" || bad=1
    check "a packet folder is in use (a mount point)" $bad "exit $code, the packet stays whole, the other packets are written; the next run heals"
}

# The same bytes whatever the machine is set to.
settings() {
    local i bad=0 odd=""
    local langs=(C de_DE.UTF-8 tr_TR.UTF-8 ar_SA.UTF-8 fa_IR.UTF-8 th_TH.UTF-8 fr_CH.UTF-8 ja_JP.UTF-8)
    local zones=(UTC America/St_Johns Pacific/Kiritimati Pacific/Pago_Pago Asia/Kathmandu Europe/Stockholm)
    local processors=(1 2 16)
    for ((i = 0; i < 16; i++)); do
        rm -rf "$work/set"
        # The shell itself complains of a locale that is not installed.
        (export LANG=${langs[i % 8]} LC_ALL=${langs[i % 8]} TZ=${zones[i % 6]} DOTNET_PROCESSOR_COUNT=${processors[i % 3]} \
            DOTNET_SYSTEM_GLOBALIZATION_INVARIANT=$((i / 8)) DOTNET_SYSTEM_GLOBALIZATION_PREDEFINED_CULTURES_ONLY=0; run "$work/set") 2>/dev/null
        sums "$work/set" >"$work/have"
        cmp -s "$work/want" "$work/have" || { bad=1; odd="$odd ${langs[i % 8]}/${zones[i % 6]}/${processors[i % 3]}"; }
    done
    check "16 settings of locale, zone and processors" $bad "${odd:-the same bytes every time}"
}

kill_builds
two_at_once
# Seven packets have 20 MB and are written side by side: no room for any, for some, for all but the last.
full_disk 2m
full_disk 9m
full_disk 16m
bad_places
held_file
settings
if [ -s "$work/broken" ]; then sort -u "$work/broken"; fi
exit $failed
