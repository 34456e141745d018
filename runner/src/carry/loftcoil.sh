#!/bin/sh
# Starts Loftcoil with the Java beside it. Nothing else need be installed. Arguments are those of "java -jar loftcoil.jar".
from=$PWD
self=$0
# By a link from elsewhere too.
if [ -L "$self" ] && command -v readlink >/dev/null 2>&1; then
  self=$(readlink -f -- "$self")
fi
cd -- "$(dirname -- "$self")" || exit 2

# Java takes file names by the language setting; one that knows English letters alone would lose all others.
case ${LC_ALL:-${LC_CTYPE:-${LANG:-}}} in
  *UTF-8* | *utf8* | *UTF8* | *utf-8*) ;;
  *)
    if [ "$(uname)" = Darwin ]; then LC_ALL=en_US.UTF-8; else LC_ALL=C.UTF-8; fi
    export LC_ALL
    ;;
esac

if [ ! -x runtime/bin/java ]; then
  echo "runtime/bin/java in $PWD cannot be run; allowed: the whole folder as it was unpacked, on a disk or stick that lets programs run" >&2
  exit 2
fi

# One place for small pieces of memory for each thread that asks would hold several times what is in use (glibc alone reads this).
export MALLOC_ARENA_MAX=2

# The starter's own settings: a small heap that is given back, with a small part for what is new, the quick compiler, and classes made
# ready when this was packed.
# The archive of classes is for the very Java beside it; where a copy has changed the times of files, Java quietly does without.
exec runtime/bin/java \
  -XX:MinHeapSize=24m -XX:InitialHeapSize=64m -Xmx192m -XX:MaxNewSize=16m -XX:+UseSerialGC -XX:MinHeapFreeRatio=10 -XX:MaxHeapFreeRatio=25 -XX:-ShrinkHeapInSteps \
  -XX:TieredStopAtLevel=1 \
  -XX:+IgnoreUnrecognizedVMOptions -XX:+UnlockDiagnosticVMOptions -XX:ArchiveRelocationMode=0 -XX:SharedArchiveFile=app/loftcoil.jsa -Xlog:disable -Xlog:all=error:stderr \
  -Dloftcoil.shared=app/loftcoil.jsa -Dloftcoil.from="$from" \
  -jar app/loftcoil.jar "$@"
