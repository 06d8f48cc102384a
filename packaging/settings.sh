# shellcheck shell=bash
# What the scripts that pack Evenfall have in common. To be read by "source" from the project's folder.
# shellcheck disable=SC2034 # used by the scripts that read this
version=$(sed -n 's:^  <version>\(.*\)</version>$:\1:p' pom.xml)
out=target/package
jdk=${JAVA_HOME:-$(dirname "$(dirname "$(readlink -f "$(command -v javac)")")")}
# all files in packages bear the date that the build gives to those in its jar: the same sources, the same package
stamp=$(sed -n 's:.*<project.build.outputTimestamp>\(.*\)</.*:\1:p' pom.xml)
SOURCE_DATE_EPOCH=${SOURCE_DATE_EPOCH:-$(date -d "$stamp" +%s)}
export SOURCE_DATE_EPOCH

fail() {
    echo "$1" >&2
    exit 1
}

[ -f target/evenfall.jar ] || fail "target/evenfall.jar is missing: mvn -B -ntp -DskipTests package"
[ -f target/evenfall.classes ] || fail "target/evenfall.classes is missing: mvn -B -ntp -DskipTests package"

# The flags of the virtual machine, one a line; later Javas need one more.
java_flags() {
    grep -v '^#' packaging/java-flags
    local major
    major=$(sed -n 's/^JAVA_VERSION="\([0-9]*\).*/\1/p' "$jdk/release")
    [ "$major" -lt 23 ] || echo --sun-misc-unsafe-memory-access=allow
}

# Licences, parts list and README with its pictures, into the folder named.
copy_papers() {
    mkdir -p "$1/demo"
    cp LICENSE README.md "$1/"
    cp -r demo/pictures "$1/demo/"
    cp -r packaging/licences "$1/"
    [ -f target/evenfall-sbom.json ] || mvn -B -ntp -q cyclonedx:makeBom >&2
    cp target/evenfall-sbom.json "$1/"
}

# One date for all files of a folder, and rights that do not depend on who packs.
same_dates_and_rights() {
    chmod -R u=rwX,go=rX "$1"
    find "$1" -exec touch -h -d "@$SOURCE_DATE_EPOCH" {} +
}
