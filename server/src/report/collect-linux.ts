// The script that collects what a machine says of itself under Linux: plain outputs, what is private masked.

export const collectOnLinux = String.raw`#!/bin/sh
# What this machine says of itself, for "fettle verify": plain outputs of common tools in one folder.
# Read this script, then run it as root:     sudo sh collect.sh machine
# And once more while the machine works hard: sudo sh collect.sh machine load
# Nothing leaves the machine. Serial numbers, UUIDs, world-wide names and MACs are masked.
set -u
umask 077
# Outputs in the tools' own words, whatever language this machine speaks.
LC_ALL=C
export LC_ALL
folder=machine
[ $# -ge 1 ] && folder=$1
mkdir -p "$folder" || exit 1

has() {
  command -v "$1" >/dev/null 2>&1 && return
  echo "$1 is not installed: what it shows stays unknown." >&2
  return 1
}

# Private values become "--"; the names of the fields stay.
mask() {
  sed -E \
    -e 's/^([[:space:]]*(Serial Number|UUID|Asset Tag|SKU Number)):.*/\1: --/' \
    -e 's/(Device Serial Number|Serial number:|Asset tag:).*/\1 --/' \
    -e '/"(wwn|eui64|nguid|logical_unit_id)": *\{/,/\}/ s/: *[0-9]+/: 0/' \
    -e 's/"(serial|serial_number|wwn|logical_unit_id|eui64|nguid|id|id-link)": *"[^"]*"/"\1": "--"/' \
    -e 's/"(uuid|ptuuid|partuuid|label|partlabel|mountpoint|owner|group)": *"[^"]*"/"\1": "--"/' \
    -e '/"(mountpoints|fsroots)": *\[/,/\]/ s/^( *)"[^"]*"(,?)$/\1"--"\2/' \
    -e 's/"(mountpoints|fsroots)": *\["[^]]*\]/"\1": []/' \
    -e 's/[0-9A-Fa-f]{8}-([0-9A-Fa-f]{4}-){3}[0-9A-Fa-f]{12}/--/g' \
    -e 's/([0-9A-Fa-f]{2}:){5}[0-9A-Fa-f]{2}/--/g'
}

if [ $# -ge 2 ] && [ "$2" = load ]; then
  has lspci && lspci -vvnn 2>/dev/null | mask >"$folder/lspci-load.txt"
  has sensors || exit 0
  n=1
  while [ "$n" -le 60 ]; do
    sensors -j 2>/dev/null >"$folder/sensors-load-$n.json"
    n=$((n + 1))
    sleep 10
  done
  exit 0
fi

[ "$(id -u)" = 0 ] || echo "Not run as root: links, modules and the drives' health stay unknown." >&2
has dmidecode && dmidecode 2>/dev/null | mask >"$folder/dmidecode.txt"
has lspci && lspci -vvnn 2>/dev/null | mask >"$folder/lspci.txt"
has lscpu && lscpu -J | mask >"$folder/lscpu.json"
has lsblk && lsblk -J -O -b | mask >"$folder/lsblk.json"
has sensors && sensors -j 2>/dev/null >"$folder/sensors.json"
has decode-dimms && decode-dimms 2>/dev/null | grep -v -i serial >"$folder/decode-dimms.txt"
ls -l /sys/block >"$folder/block.txt"

# A drive's serial number becomes six letters, by which a swap is seen. Their salt stays on this machine.
salt=$HOME/.fettle-salt
[ -s "$salt" ] || od -An -N16 -tx1 /dev/urandom | tr -d ' \n' >"$salt"
if has smartctl; then
  for drive in $(lsblk -d -n -o NAME | grep -E '^(sd|nvme)'); do
    smartctl -x -j "/dev/$drive" >"$folder/.raw" 2>/dev/null
    serial=$(sed -n 's/.*"serial_number": *"\([^"]*\)".*/\1/p' "$folder/.raw" | head -n 1)
    key=$(printf '%s%s' "$(cat "$salt")" "$serial" | sha256sum | cut -c 1-6)
    mask <"$folder/.raw" | sed "s/\"serial_number\": \"--\"/\"serial_number\": \"masked-$key\"/" \
      >"$folder/smartctl-$drive.json"
    rm -f "$folder/.raw"
  done
fi

# What each display says, in hexadecimal; its serial numbers are blanked and the check sum made anew.
for block in /sys/class/drm/card*-*/edid; do
  [ -s "$block" ] || continue
  name=$(basename "$(dirname "$block")")
  od -An -v -tu1 "$block" | awk '
    { for (i = 1; i <= NF; i++) b[n++] = $i }
    END {
      for (i = 12; i < 16; i++) b[i] = 0
      for (d = 54; d < 126; d += 18)
        if (b[d] == 0 && b[d + 1] == 0 && b[d + 3] == 255) for (i = d + 5; i < d + 18; i++) b[i] = 32
      for (i = 0; i < 127; i++) s += b[i]
      b[127] = (256 - s % 256) % 256
      for (i = 0; i < n; i++) printf "%02x%s", b[i], i % 16 == 15 ? "\n" : " "
    }' >"$folder/edid-$name.hex"
done
echo "Written into $folder. Look through it, then: fettle verify BUILD $folder"
`;
