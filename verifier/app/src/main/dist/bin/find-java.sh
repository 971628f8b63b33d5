# Read by the launchers, not run. Sets "java" (the command), "jdk" (its folder) and "jdk_version" (with the build), or
# ends with one line that says what is missing. Needs one fork at most: a start of the program waits for it.

find_java() {
    if [ -n "${JAVA_HOME:-}" ]; then
        jdk=$JAVA_HOME
        [ -x "$jdk/bin/java" ] || refuse "JAVA_HOME is $jdk, but there is no bin/java in it." \
            "Let it name a JDK 17 or newer, or unset it."
        java=$jdk/bin/java
    else
        java=$(command -v java) || java=
        if [ -x /usr/libexec/java_home ]; then
            # On macOS the command on the PATH is a stub; this one knows where the JDKs are.
            jdk=$(/usr/libexec/java_home -v 17+ 2>/dev/null) && java=$jdk/bin/java
        fi
        [ -n "$java" ] || refuse "no java on the PATH." "Install a JDK 17 or newer, or let JAVA_HOME name one."
        if [ -h "$java" ]; then
            real=$(readlink -f "$java" 2>/dev/null) && [ -n "$real" ] && java=$real
        fi
        jdk=${java%/bin/java}
    fi
    read_jdk_version
    feature=${jdk_version%%[!0-9]*}
    [ "${feature:-0}" -ge 17 ] || refuse "Java 17 or newer is needed, but $java is ${jdk_version:-of an unknown version}." \
        "Install a JDK 17 or newer, or let JAVA_HOME name one."
}

# Every JDK since 9 says in a file what it is; asking the command costs a start of the virtual machine.
read_jdk_version() {
    jdk_version=
    if [ -r "$jdk/release" ]; then
        while IFS='=' read -r key value; do
            case $key in
                JAVA_RUNTIME_VERSION) jdk_version=$value; break ;;
                JAVA_VERSION) jdk_version=$value ;;
            esac
        done <"$jdk/release"
        jdk_version=${jdk_version#\"}
        jdk_version=${jdk_version%\"}
    fi
    if [ -z "$jdk_version" ]; then
        jdk_version=$("$java" -version 2>&1) || jdk_version=
        jdk_version=${jdk_version#*version \"}
        jdk_version=${jdk_version%%\"*}
    fi
}

# refuse WHAT ADVICE: one line, and the exit code for a wrong input or surrounding.
refuse() {
    printf 'headgate: %s %s\n' "$1" "$2" >&2
    exit 2
}
