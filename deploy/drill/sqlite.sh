#!/usr/bin/env bash
# Practises the loss of the small computer: copy, restore into a new file, hold the two against each other.
# Takes: a SQLite file (it may be in use). Gives: 0 and one line, or where it fails. Never writes to that file.
#   deploy/drill/sqlite.sh /var/lib/bellyful/bellyful.db
set -euo pipefail
from=$(realpath "${1:?give the database file}")
bellyful=${BELLYFUL:-bellyful}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
export BELLYFUL__GATEWAY__PLAIN__SECRET=drill BELLYFUL__GATEWAY__PLAIN__SEND_URL=http://127.0.0.1:9/

start=$SECONDS
BELLYFUL__DATABASE="sqlite:$from" "$bellyful" backup "$work/copy.gz" >&2
BELLYFUL__DATABASE="sqlite:$work/restored.db" "$bellyful" restore "$work/copy.gz" >&2
BELLYFUL__DATABASE="sqlite:$work/restored.db" "$bellyful" backup "$work/again.gz" >&2
cmp <(gzip -dc "$work/copy.gz" | sort) <(gzip -dc "$work/again.gz" | sort)
BELLYFUL__DATABASE="sqlite:$work/restored.db" "$bellyful" rebuild --check >&2
echo "restored the same: $(gzip -dc "$work/copy.gz" | wc -l) lines in $((SECONDS - start)) s"
