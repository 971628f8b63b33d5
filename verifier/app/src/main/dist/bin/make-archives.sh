# Read by the launcher on the first start with a Java or a set of libraries; uses its variables. Runs the demo once and
# lets the virtual machine write down the classes that it loaded, here and in the head's process. Made aside and moved, so
# that a start beside this one never sees half an archive. Nothing in here may stop the start that asked for it.

make_archives() {
    mkdir -p "$archives" 2>/dev/null || { archives=; return 0; }
    making=$archives/making
    if ! mkdir "$making" 2>/dev/null; then
        maker=$(cat "$making/maker" 2>/dev/null) || maker=
        # A start beside this one is at it, unless it was killed.
        if [ -z "$maker" ] || kill -0 "$maker" 2>/dev/null; then
            return 0
        fi
        rm -rf "$making"
        mkdir "$making" 2>/dev/null || return 0
    fi
    echo $$ >"$making/maker"
    trap 'rm -rf "$making"; exit 130' INT TERM HUP
    echo "headgate: preparing a faster start, once for this Java" >&2
    drop_archives_of_lost_programs
    "$java" -Xshare:auto -XX:ArchiveClassesAtExit="$making/program.jsa" -Dheadgate.child.archive.write="$making/child.jsa" \
        -Xlog:disable -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -XX:-UsePerfData -Dheadgate.home="$home" \
        -cp "$classpath" headgate.app.Main demo --out "$making/demo" </dev/null >/dev/null 2>&1
    for archive in program child; do
        [ -s "$making/$archive.jsa" ] && mv -f "$making/$archive.jsa" "$archives/$archive.jsa"
    done
    printf '%s\n' "$home" >"$archives/made"
    rm -rf "$making"
    trap - INT TERM HUP
}

# An archive takes some 20 MB; a program that was built anew or removed leaves its own behind.
drop_archives_of_lost_programs() {
    find "$cache/archives" -name made -type f 2>/dev/null | while IFS= read -r made; do
        read -r program <"$made" || continue
        [ -d "$program" ] || rm -rf "${made%/made}"
    done
}
