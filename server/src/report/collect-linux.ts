// The script that collects what a machine says of itself under Linux: plain outputs, what is private masked.

export const collectOnLinux = String.raw`#!/bin/sh
# What this machine says of itself, for "fettle verify": plain outputs of common tools in one new folder.
# Read this script, then run it as root:      sudo sh collect.sh machine
# And once more while the machine works hard: sudo sh collect.sh machine load     (ten minutes)
# Nothing leaves the machine, and nothing is changed on it. Serial numbers, UUIDs, world-wide names and network
# addresses are masked; names of hosts, users, volumes and folders are not read at all.
# Beside the folder one file is written: .fettle-salt in the home folder, a random number by which serial numbers
# become six letters that tell a swap and nothing else.
umask 077
# Outputs in the tools' own words, whatever language this machine speaks.
LC_ALL=C
export LC_ALL
case $1 in
  '') folder=./machine ;;
  /*) folder=$1 ;;
  *) folder=./$1 ;;
esac

has() {
  command -v "$1" >/dev/null 2>&1 && return
  echo "$1 is not installed: what it shows stays unknown." >&2
  return 1
}

# Private values become "--"; the names of the fields stay.
mask() {
  sed -E \
    -e 's/^([[:space:]]*([A-Z]+ )?(Serial Number|UUID|Asset Tag|SKU Number)):.*/\1: --/' \
    -e 's/(Device Serial Number|Serial number:|Asset tag:).*/\1 --/' \
    -e 's/^([[:space:]]+\[(SN|V.|Y.)\] [^:]*:).*/\1 --/' \
    -e 's/"(wwn|eui64|nguid|logical_unit_id)": *\{[^}]*\}/"\1": "--"/' \
    -e '/"(wwn|eui64|nguid|logical_unit_id)": *\{/,/\}/ s/: *[0-9]+/: 0/' \
    -e 's/"(serial|serial_number|wwn|logical_unit_id|eui64|nguid|id|id-link)": *"[^"]*"/"\1": "--"/' \
    -e 's/"((attached_)?sas_address|[a-z_]*nqn)": *"[^"]*"/"\1": "--"/' \
    -e 's/"(uuid|ptuuid|partuuid|label|partlabel|mountpoint|owner|group)": *"[^"]*"/"\1": "--"/' \
    -e '/"(mountpoints|fsroots)": *\[/,/\]/ s/^( *)"[^"]*"(,?)$/\1"--"\2/' \
    -e 's/"(mountpoints|fsroots)": *\["[^]]*\]/"\1": []/' \
    -e 's/[0-9A-Fa-f]{8}-([0-9A-Fa-f]{4}-){3}[0-9A-Fa-f]{12}/--/g' \
    -e 's/([0-9A-Fa-f]{2}[:-]){5,7}[0-9A-Fa-f]{2}/--/g'
}

# What a tool had nothing to say to is left out; who ran this through sudo can read the rest.
finish() {
  for file in "$folder"/*; do
    [ -s "$file" ] || rm -f "$file"
  done
  [ -z "$SUDO_UID" ] || chown "$SUDO_UID:$SUDO_GID" "$folder" "$folder"/*
  echo "Written into $folder. Look through it, then: fettle verify BUILD $folder"
}

if [ "$2" = load ]; then
  if [ ! -f "$folder/block.txt" ]; then
    echo "$folder holds nothing of this script: run it without \"load\" first." >&2
    exit 1
  fi
  has lspci && lspci -vvnn 2>/dev/null | mask >"$folder/lspci-load.txt"
  n=1
  has sensors && while [ "$n" -le 60 ]; do
    sensors -j 2>/dev/null >"$folder/sensors-load-$n.json"
    n=$((n + 1))
    sleep 10
  done
  finish
  exit 0
fi

if [ -e "$folder" ] && [ -n "$(ls -A "$folder")" ]; then
  echo "$folder is not empty: name a new folder." >&2
  exit 1
fi
mkdir -p "$folder" || exit 1
[ "$(id -u)" = 0 ] || echo "Not run as root: links, modules and the drives' health stay unknown." >&2

# Firmware, system, board, processor, slots and memory; no other table is read.
has dmidecode && dmidecode -t 0,1,2,4,9,16,17 2>/dev/null | mask >"$folder/dmidecode.txt"
has lspci && lspci -vvnn 2>/dev/null | mask >"$folder/lspci.txt"
has lscpu && lscpu -J | mask >"$folder/lscpu.json"
# Whole drives, and nothing of what is on them.
has lsblk && lsblk -d -J -b -o NAME,TYPE,RM,SIZE,VENDOR,MODEL,TRAN | mask >"$folder/lsblk.json"
has sensors && sensors -j 2>/dev/null >"$folder/sensors.json"
has decode-dimms && decode-dimms 2>/dev/null | grep -v -i serial >"$folder/decode-dimms.txt"
ls -l /sys/block | mask >"$folder/block.txt"

# Of a drive's serial number six letters stay; none where there is no salt to make them with.
if has smartctl; then
  salt=$HOME/.fettle-salt
  [ -s "$salt" ] || od -An -N16 -tx1 /dev/urandom | tr -d ' \n' >"$salt"
  for block in /sys/block/sd* /sys/block/nvme*n*; do
    drive=$(basename "$block")
    # One of several ways to a drive is no drive of its own, nor is a pattern that nothing matched.
    case $drive in nvme*c* | *'*') continue ;; esac
    said=$(smartctl -x -j "/dev/$drive" 2>/dev/null)
    serial=$(printf '%s\n' "$said" | sed -n 's/.*"serial_number": *"\([^"]*\)".*/\1/p' | head -n 1)
    key=--
    [ -s "$salt" ] && [ -n "$serial" ] &&
      key=masked-$(printf '%s%s' "$(cat "$salt")" "$serial" | sha256sum | cut -c 1-6)
    printf '%s\n' "$said" | mask | sed "s/\"serial_number\": \"--\"/\"serial_number\": \"$key\"/" \
      >"$folder/smartctl-$drive.json"
  done
fi

# What each display says, in hexadecimal. Its serial numbers are blanked, wherever a block holds one, and the check
# sums made anew.
for block in /sys/class/drm/card*-*/edid; do
  [ -s "$block" ] || continue
  name=$(basename "$(dirname "$block")")
  od -An -v -tu1 "$block" | awk '
    function blank(from, to, by) { for (; from < to; from++) b[from] = by }
    function named(d) { if (b[d] == 0 && b[d + 1] == 0 && b[d + 3] == 255) blank(d + 5, d + 18, 32) }
    function sum(from, to,  i, s) { for (i = from; i < to; i++) s += b[i]; b[to] = (256 - s % 256) % 256 }
    { for (i = 1; i <= NF; i++) b[n++] = $i }
    END {
      blank(12, 16, 0)
      for (d = 54; d < 126; d += 18) named(d)
      sum(0, 127)
      for (at = 128; at + 127 < n; at += 128) {
        if (b[at] == 2 && b[at + 2] > 3) for (d = at + b[at + 2]; d + 18 < at + 128; d += 18) named(d)
        if (b[at] == 112) {
          end = at + 5 + b[at + 2]
          for (d = at + 5; d + 2 < end && end < at + 127; d += 3 + b[d + 2]) {
            if ((b[d] == 0 || b[d] == 32) && b[d + 2] > 8) blank(d + 8, d + 12, 0)
            if ((b[d] == 18 || b[d] == 40) && b[d + 2] > 21) blank(d + 21, d + 25, 0)
          }
          if (end < at + 127) sum(at + 1, end)
        }
        sum(at, at + 127)
      }
      for (i = 0; i < n; i++) printf "%02x%s", b[i], i % 16 == 15 ? "\n" : " "
    }' >"$folder/edid-$name.hex"
done
finish
`;
