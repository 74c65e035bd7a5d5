#!/usr/bin/env bash
# Practises the loss of the PostgreSQL server, two ways: the bot's own copy, and pg_dump; each restored into a database
# of its own beside the real one and held against it, then dropped.
# Takes: the real database's URL; the user may create databases; best while no node serves, else rows of the meantime
# make the second comparison differ. Gives: 0 and a line for each way. Never writes to the real database.
#   deploy/drill/postgres.sh postgres://bellyful@127.0.0.1/bellyful
set -euo pipefail
from=${1:?give the database URL}
bellyful=${BELLYFUL:-bellyful}
base=${from%/*}
work=$(mktemp -d)
copy=drill_copy_$$ dump=drill_dump_$$
trap 'rm -rf "$work"; for d in $copy $dump; do psql -q "$base/postgres" -c "DROP DATABASE IF EXISTS $d"; done' EXIT
export BELLYFUL__GATEWAY__PLAIN__SECRET=drill BELLYFUL__GATEWAY__PLAIN__SEND_URL=http://127.0.0.1:9/
rows() { BELLYFUL__DATABASE="$1" "$bellyful" backup "$work/rows.gz" >&2; gzip -dc "$work/rows.gz" | sort; }

start=$SECONDS
BELLYFUL__DATABASE="$from" "$bellyful" backup "$work/copy.gz" >&2
psql -q "$base/postgres" -c "CREATE DATABASE $copy"
BELLYFUL__DATABASE="$base/$copy" "$bellyful" restore "$work/copy.gz" >&2
cmp <(gzip -dc "$work/copy.gz" | sort) <(rows "$base/$copy")
BELLYFUL__DATABASE="$base/$copy" "$bellyful" rebuild --check >&2
echo "the bot's copy restored the same: $(gzip -dc "$work/copy.gz" | wc -l) lines in $((SECONDS - start)) s"

start=$SECONDS
pg_dump -Fc -f "$work/dump" "$from"
psql -q "$base/postgres" -c "CREATE DATABASE $dump"
pg_restore --exit-on-error --no-owner -d "$base/$dump" "$work/dump"
cmp <(gzip -dc "$work/copy.gz" | sort) <(rows "$base/$dump")
echo "pg_dump restored the same in $((SECONDS - start)) s"
