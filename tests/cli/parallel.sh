#!/bin/sh
# Judges builds, one as JSON in each line of a file, by several processes at once, started by GNU parallel (Debian's
# package `parallel`). Prints the reports in the order of the lines.
# usage: parallel.sh BUILDS.jsonl [processes]
set -eu
if ! command -v parallel >/dev/null 2>&1; then
  echo "skipped: there is no GNU parallel here (Debian: apt-get install parallel)" >&2
  exit 77
fi
command=${TRIALFIT:-trialfit}
# Of each piece {#} is the number, from 1: so each process knows where in the file its lines stand.
exec parallel --will-cite --pipe --keep-order --jobs "${2:-2}" -N 50 \
  "$command" check --stream --brief --first-line '$(( 50 * {#} - 49 ))' <"$1"
