// Loaded before the program under test: every way out of the process throws and is noted, every file that is opened is
// noted, and at the end the time and memory it took are written down.
const fs = require('node:fs');

const writeReport = fs.writeFileSync;
const calls = [];
const opened = [];

function forbid(owner, names, what) {
  for (const name of names) {
    if (typeof owner[name] !== 'function') continue;
    owner[name] = () => {
      calls.push(`${what}.${name}`);
      throw new Error(`${what}.${name} is not to be called`);
    };
  }
}

const net = require('node:net');
forbid(net, ['connect', 'createConnection', 'createServer'], 'net');
forbid(net.Socket.prototype, ['connect'], 'net.Socket');
forbid(net.Server.prototype, ['listen'], 'net.Server');
forbid(require('node:tls'), ['connect', 'createServer'], 'tls');
for (const name of ['http', 'https']) forbid(require(`node:${name}`), ['request', 'get', 'createServer'], name);
forbid(require('node:http2'), ['connect', 'createServer', 'createSecureServer'], 'http2');
forbid(require('node:dgram'), ['createSocket'], 'dgram');
const dns = require('node:dns');
forbid(
  dns,
  Object.keys(dns).filter((name) => /^(lookup|resolve|reverse)/.test(name)),
  'dns',
);
forbid(
  dns.promises,
  Object.keys(dns.promises).filter((name) => /^(lookup|resolve|reverse)/.test(name)),
  'dns.promises',
);
forbid(
  require('node:child_process'),
  ['spawn', 'spawnSync', 'exec', 'execSync', 'execFile', 'execFileSync', 'fork'],
  'child_process',
);
forbid(globalThis, ['fetch', 'WebSocket', 'EventSource'], 'globalThis');

function note(owner, names) {
  for (const name of names) {
    const real = owner[name];
    if (typeof real !== 'function') continue;
    owner[name] = function (path, ...rest) {
      if (typeof path === 'string' || path instanceof URL || Buffer.isBuffer(path)) opened.push(String(path));
      return real.call(this, path, ...rest);
    };
  }
}

note(fs, [
  'open',
  'openSync',
  'readFile',
  'readFileSync',
  'readdir',
  'readdirSync',
  'opendir',
  'opendirSync',
  'createReadStream',
  'createWriteStream',
  'writeFile',
  'writeFileSync',
  'appendFileSync',
]);
note(fs.promises, ['open', 'readFile', 'readdir', 'opendir', 'writeFile']);

process.on('exit', () => {
  const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
  const told = { cpuMs: (userCPUTime + systemCPUTime) / 1000, peakMb: maxRSS / 1024, calls, opened };
  writeReport(process.env.FETTLE_TOLD, JSON.stringify(told));
});
