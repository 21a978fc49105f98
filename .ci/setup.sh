# What the scripts `worthsaving`, `check` and `.ci/run` share: finding or installing what is missing.
# Sourced by bash with `set -euo pipefail`; the caller has set `project` to the project folder.
# MAVEN_ARGS is handed to every Maven call, for instance MAVEN_ARGS=-Dmaven.repo.local=/tmp/repository.

least_java=17

say() {
    printf '%s\n' "$*" >&2
}

# Major version of the Java that would be used, empty when there is none.
java_version() {
    local line
    line=$(java -version 2>&1 | grep -m 1 'version "') || return 0
    line=${line#*\"}
    line=${line%%\"*}
    printf '%s' "${line%%[.-]*}"
}

has_jdk() {
    command -v javac > /dev/null 2>&1 || return 1
    local version
    version=$(java_version)
    [[ $version =~ ^[0-9]+$ ]] && ((version >= least_java))
}

# Runs apt-get as root, or as a user who may do so without a password; fails where neither holds.
as_root() {
    if [[ $(id -u) == 0 ]]; then
        DEBIAN_FRONTEND=noninteractive "$@"
    elif command -v sudo > /dev/null 2>&1 && sudo -n true 2> /dev/null; then
        sudo -n DEBIAN_FRONTEND=noninteractive "$@"
    else
        return 1
    fi
}

# install_packages NAME...: from the Debian archive, output on standard error.
install_packages() {
    local command="apt-get update && apt-get install -y --no-install-recommends $*"
    if ! command -v apt-get > /dev/null 2>&1; then
        say "Missing: $*. On Debian or Ubuntu run as root: $command"
        say "Elsewhere install a JDK of version $least_java or newer, and Maven 3.8 or newer, and try again."
        return 1
    fi
    say "Installing: $*"
    if ! { as_root apt-get -q update && as_root apt-get -q install -y --no-install-recommends "$@"; } >&2; then
        say "Could not install: $*. Run as root: $command"
        return 1
    fi
}

# Sees to it that a JDK and Maven are there; the JDK that JAVA_HOME names comes first, as it does for Maven.
need_java_and_maven() {
    if [[ -n ${JAVA_HOME:-} && -x $JAVA_HOME/bin/javac ]]; then
        PATH=$JAVA_HOME/bin:$PATH
    fi
    local missing=()
    has_jdk || missing+=(default-jdk-headless)
    command -v mvn > /dev/null 2>&1 || missing+=(maven)
    if ((${#missing[@]} > 0)); then
        install_packages "${missing[@]}"
        hash -r
    fi
    if ! has_jdk; then
        say "A JDK of version $least_java or newer is needed; this machine's java is '$(java_version)'."
        say "Install one and put it first in PATH."
        return 1
    fi
}

on_linux() {
    [[ $OSTYPE == linux* ]]
}

# has_library NAME: whether NAME.so is there, as far as can be told; ldconfig is often outside a user's PATH.
has_library() {
    on_linux || return 0
    local list=ldconfig
    command -v ldconfig > /dev/null 2>&1 || list=/sbin/ldconfig
    [[ -x $(command -v "$list") ]] || return 0
    "$list" -p | grep "$1\.so" > /dev/null
}

# A screen that nobody looks at, and what JavaFX needs to draw on it; fails where it cannot be installed.
need_virtual_screen() {
    if ! command -v xvfb-run > /dev/null 2>&1 || ! has_library libgtk-3; then
        install_packages xvfb xauth libgtk-3-0 libxtst6 libxxf86vm1 libgl1 fontconfig fonts-dejavu-core || return 1
        hash -r
    fi
}

# What JavaFX needs to open a window on the screen that is there.
need_window_libraries() {
    if ! has_library libgtk-3; then
        install_packages libgtk-3-0 libxtst6 libxxf86vm1 libgl1 fontconfig fonts-dejavu-core || return 1
    fi
}

# Fitting price models runs native code that wants the OpenMP library; saved models work without.
need_fitting_library() {
    if ! has_library libgomp; then
        install_packages libgomp1
    fi
}

# maven ARGUMENT...: Maven in the project folder.
maven() {
    # MAVEN_ARGS may hold several arguments. Maven 3.9 reads it itself, so it is taken out of the environment.
    # shellcheck disable=SC2086
    (cd "$project" && env -u MAVEN_ARGS mvn -B -Dstyle.color=never ${MAVEN_ARGS:-} "$@")
}
