#!/usr/bin/env bash
# Builds the jar twice, in two new folders, as two unlike machines would, and compares. Arguments go to
# Maven, such as -o.
set -euo pipefail
cd "$(dirname "$0")/../.."
top=$(mktemp -d)
trap 'rm -rf "$top"' EXIT

build() { # folder, time zone, language; the rest goes to Maven
  mkdir -p "$top/$1"
  git ls-files -z | tar --null --no-recursion -T - -cf - | tar -xf - -C "$top/$1"
  (cd "$top/$1" && TZ=$2 MAVEN_OPTS="-Duser.language=$3" mvn -B -q -DskipTests "${@:4}" package)
}

build a UTC en "$@"
build another/folder Asia/Kathmandu tr "$@"
if cmp "$top/a/target/seamsoak.jar" "$top/another/folder/target/seamsoak.jar"; then
  echo "twice the same: sha256 $(sha256sum <"$top/a/target/seamsoak.jar" | cut -d ' ' -f 1)"
else
  exit 1
fi
