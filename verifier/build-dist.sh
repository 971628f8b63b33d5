# Read by verifier/headgate when a source file is newer than the program; uses its variables and find-java.sh. Builds only
# if the content of the sources changed, one build at a time, aside, and moves the result into place when it is whole.

build_if_changed() {
    mkdir -p "$store" || exit 2
    take_lock
    # The stamp is older than all that is read from here on: what changes meanwhile is newer and found at the next start.
    : >"$store/stamp"
    digest=$(digest_of_sources)
    if [ ! -x "$store/$digest/bin/headgate" ]; then
        check_tools
        build
        after=$(digest_of_sources)
        if [ "$after" != "$digest" ]; then
            rm -rf "$store/lock"
            refuse "the sources changed while they were built." "Run it again when they are at rest."
        fi
        install_dist
    fi
    echo "$digest" >"$store/current.new"
    touch -r "$store/stamp" "$store/current.new"
    mv -f "$store/current.new" "$store/current"
    rm -rf "$store/lock"
    trap - EXIT INT TERM HUP
    built=$store/$digest/bin/headgate
}

take_lock() {
    told=
    until mkdir "$store/lock" 2>/dev/null; do
        holder=$(cat "$store/lock/holder" 2>/dev/null) || holder=
        if [ -n "$holder" ] && ! kill -0 "$holder" 2>/dev/null; then
            rm -rf "$store/lock"
            continue
        fi
        [ -n "$told" ] || echo "headgate: waiting for another build in $store" >&2
        told=yes
        sleep 1
    done
    echo $$ >"$store/lock/holder"
    trap 'rm -rf "$store/lock"' EXIT
    trap 'exit 130' INT TERM HUP
}

digest_of_sources() {
    if command -v sha256sum >/dev/null; then
        sum=sha256sum
    else
        sum="shasum -a 256"
    fi
    (cd "$checkout" && sources -type f | LC_ALL=C sort | tr '\n' '\0' | xargs -0 $sum | $sum) 2>/dev/null | cut -d' ' -f1
}

check_tools() {
    find_java
    [ -x "$jdk/bin/javac" ] || refuse "$jdk holds no compiler." "Install a JDK 17 or newer, not only its runtime part."
    command -v mvn >/dev/null || refuse "no mvn on the PATH." "Install Maven 3.8 or newer: it builds the program."
    maven=$(JAVA_HOME=$jdk mvn -v 2>/dev/null | sed -n 's/.*Apache Maven \([0-9][0-9.]*\).*/\1/p')
    major=${maven%%.*}
    minor=${maven#*.}
    minor=${minor%%.*}
    if [ "${major:-0}" -lt 3 ] || { [ "$major" -eq 3 ] && [ "${minor:-0}" -lt 8 ]; }; then
        refuse "Maven 3.8 or newer is needed, but mvn is ${maven:-of an unknown version}." "Install a newer one."
    fi
}

# Without tests, formatter and compile checks: those belong to 'mvn verify'. Builds beside each module's own target.
build() {
    log=$store/build.log
    echo "headgate: building; the first time Maven also fetches libraries" >&2
    (
        cd "$checkout" || exit 3
        JAVA_HOME=$jdk mvn -B -ntp -Dstyle.color=never -P '!checks-on-17' -pl verifier/app -am package \
            -Dbuild.folder=target/launcher -Dmaven.test.skip=true -Dmaven.javadoc.skip=true -Denforcer.skip=true 2>&1
        printf '\nheadgate-status %s\n' $?
    ) | show_modules || {
        echo "headgate: the build failed; see $log" >&2
        grep '^\[ERROR\]' "$log" | head -n 5 >&2
        exit 3
    }
}

# Keeps the log, says one line a module, and ends as the build did.
show_modules() {
    status=3
    while IFS= read -r line; do
        case $line in
            "headgate-status "*) status=${line#* } ;;
            *) printf '%s\n' "$line" >&3 ;;
        esac
        case $line in
            "[INFO] Building "*" ["*"]")
                module=${line#*Building }
                module=${module% \[*}
                module=${module%%  *}
                count=${line##*\[}
                echo "headgate: ${count%\]} ${module% *}" >&2
                ;;
        esac
    done 3>"$log"
    return "$status"
}

# Keeps the build before this one too: a run of it may still be on its way.
install_dist() {
    rm -rf "$store/new"
    cp -R -p "$checkout/verifier/app/target/launcher/dist" "$store/new" || exit 3
    rm -rf "${store:?}/$digest"
    mv "$store/new" "$store/$digest" || exit 3
    for old in "$store"/*/bin; do
        old=${old%/bin}
        case ${old##*/} in
            "$digest" | "$current" | lock) ;;
            *) rm -rf "$old" ;;
        esac
    done
}
