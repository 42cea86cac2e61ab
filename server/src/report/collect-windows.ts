// The script that collects what a machine says of itself under Windows: of each class the fields that are needed alone.

export const collectOnWindows = String.raw`
# What this machine says of itself, for "fettle verify": one JSON file a class, in one new folder.
# Read this script, then run it:  powershell -ExecutionPolicy Bypass -File collect.ps1 machine
# Nothing leaves the machine, and nothing is changed on it. Only the fields below are taken: no serial numbers, UUIDs
# or MACs are among them, and no names of hosts or users.
# Run as an administrator it takes hours, wear and temperature of drives as well.
# How fast links run shows nowhere here; "fettle collect linux" from a live system reads that.
param([string]$Folder = 'machine')
if ((Test-Path -LiteralPath $Folder) -and @(Get-ChildItem -LiteralPath $Folder -Force).Count -gt 0) {
  Write-Warning "$Folder is not empty: name a new folder."
  exit 1
}
New-Item -ItemType Directory -Force -Path $Folder -ErrorAction Stop | Out-Null

function Take($Class, $Fields, $Namespace = 'root/cimv2') {
  try {
    $Found = Get-CimInstance -Namespace $Namespace -ClassName $Class -ErrorAction Stop | Select-Object $Fields
    if ($null -eq $Found) { return }
    $Found | ConvertTo-Json -Depth 3 | Out-File -Encoding utf8 -LiteralPath (Join-Path $Folder "$Class.json")
  } catch { Write-Warning "$Class cannot be read: what it shows stays unknown." }
}

Take Win32_BaseBoard @('Manufacturer', 'Product')
Take Win32_BIOS @('SMBIOSBIOSVersion', 'ReleaseDate')
Take Win32_Processor @('Name')
$Memory = @('BankLabel', 'DeviceLocator', 'Capacity', 'Manufacturer', 'PartNumber', 'Speed', 'ConfiguredClockSpeed')
Take Win32_PhysicalMemory $Memory
Take Win32_PhysicalMemoryArray @('MemoryErrorCorrection')
# Behind the last backslash stands what tells this very card from another.
$Kind = @{ n = 'PNPDeviceID'; e = { $_.PNPDeviceID -replace '\\[^\\]*$', '' } }
# The ports on the way to it, which tell a card from what is built in.
$Way = @{ n = 'LocationPath'; e = {
  $Paths = Get-PnpDeviceProperty -InstanceId $_.PNPDeviceID -KeyName DEVPKEY_Device_LocationPaths -ErrorAction Stop
  @($Paths.Data) -like 'PCIROOT*' | Select-Object -First 1
} }
Take Win32_VideoController @('Name', $Kind, $Way)
Take Win32_DiskDrive @('Model', 'Size')
$Storage = 'root/Microsoft/Windows/Storage'
# The disk's number, by which its counters are found; any other identifier is left out.
$Number = @{ n = 'DeviceId'; e = { if ("$($_.DeviceId)" -match '^\d{1,4}$') { $_.DeviceId } } }
Take MSFT_PhysicalDisk @($Number, 'Model', 'FriendlyName', 'Size', 'BusType', 'HealthStatus') $Storage
Take MSFT_StorageReliabilityCounter @($Number, 'PowerOnHours', 'Wear', 'Temperature') $Storage
Take WmiMonitorID @('UserFriendlyName', 'ManufacturerName', 'ProductCodeID') 'root/wmi'
Write-Host "Written into $Folder. Look through it, then: fettle verify BUILD $Folder"
`.trimStart();
