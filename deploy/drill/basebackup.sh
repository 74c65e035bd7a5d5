#!/usr/bin/env bash
# Practises the loss of the whole PostgreSQL server: a base backup, taken while the bot serves, started as a server of its
# own on another port and held against the real one, then removed.
# Takes: the real database's URL; its user may replicate. Run it as a user that may run a server (not root), on a machine
# with the server's programs of the same version. Gives: 0 and a line. Never writes to the real database.
#   sudo -u postgres deploy/drill/basebackup.sh postgres://bellyful@127.0.0.1/bellyful
set -euo pipefail
from=${1:?give the database URL}
bellyful=${BELLYFUL:-bellyful}
port=${PORT:-54329}
bin=$(pg_config --bindir 2>/dev/null || ls -d /usr/lib/postgresql/*/bin | sort -V | tail -n 1)
work=$(mktemp -d)
data=$work/data
trap '"$bin/pg_ctl" -D "$data" stop -m immediate >/dev/null 2>&1 || true; rm -rf "$work"' EXIT
export BELLYFUL__GATEWAY__PLAIN__SECRET=drill BELLYFUL__GATEWAY__PLAIN__SEND_URL=http://127.0.0.1:9/
rows() { BELLYFUL__DATABASE="$1" "$bellyful" backup "$work/$2.gz" >&2; gzip -dc "$work/$2.gz" | sort > "$work/$2"; }

start=$SECONDS
"$bin/pg_basebackup" -d "$from" -D "$data" -X stream -c fast
taken=$((SECONDS - start))
rm -f "$data/standby.signal"
"$bin/pg_ctl" -D "$data" -w -l "$work/log" -o "-p $port -k $work -c listen_addresses=127.0.0.1 -c synchronous_standby_names=''" start >/dev/null
there=$(sed -E "s#^(postgres(ql)?://([^@/]*@)?)[^/:]*(:[0-9]+)?/#\1127.0.0.1:$port/#" <<<"$from")
rows "$there" restored
BELLYFUL__DATABASE="$there" "$bellyful" rebuild --check >&2
rows "$from" real
# What the real one took in since stands only there.
lost=$(comm -23 "$work/restored" "$work/real" | wc -l)
echo "base backup in $taken s, $(wc -l < "$work/restored") lines restored in $((SECONDS - start)) s; $lost differ from now, $(comm -13 "$work/restored" "$work/real" | wc -l) are newer"
