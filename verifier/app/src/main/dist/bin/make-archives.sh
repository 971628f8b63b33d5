# Read by the launcher on the first start with a Java or a set of libraries; uses its variables. Runs the demo once, writes
# down which classes were loaded, here and in the head's process, and packs them. Made aside and moved, so that a start
# beside this one never sees half an archive. Nothing in here may stop the start that asked for it.

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
    trap 'rm -rf "$making"; exit 130' INT TERM HUP
    echo $$ >"$making/maker" 2>/dev/null
    echo "headgate: preparing a faster start, once for this Java" >&2
    drop_archives_of_lost_programs
    # The program's own archive is made from a list of classes, not by the run itself: only so it takes in the classes of
    # the library for command lines, which are of an old format.
    "$java" -Xshare:auto -XX:DumpLoadedClassList="$making/classes" -Dheadgate.child.archive.make="$making/child.jsa" \
        $vm_flags -Dheadgate.home="$home" -cp "$classpath" headgate.app.Main demo --out "$making/demo" \
        </dev/null >/dev/null 2>&1
    "$java" -Xshare:dump -XX:SharedClassListFile="$making/classes" -XX:SharedArchiveFile="$making/program.jsa" \
        $vm_flags -cp "$classpath" </dev/null >/dev/null 2>&1
    for archive in program child; do
        [ -s "$making/$archive.jsa" ] && mv -f "$making/$archive.jsa" "$archives/$archive.jsa" 2>/dev/null
    done
    printf '%s\n' "$home" 2>/dev/null >"$archives/made"
    rm -rf "$making"
    trap - INT TERM HUP
}

# An archive takes some 20 MB; a program that was built anew or removed leaves its own behind.
drop_archives_of_lost_programs() {
    find "$cache/archives" -name made -type f 2>/dev/null | while IFS= read -r made; do
        read -r program <"$made" || continue
        libraries=none
        [ -r "$program/lib/contents" ] && read -r libraries <"$program/lib/contents"
        case $made in
            "$cache/archives/$libraries/"*) ;;
            *) rm -rf "${made%/made}" ;;
        esac
    done
}
