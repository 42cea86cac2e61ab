// Runs the command once as `dist/fettle.js` would, then keeps what V8 compiled meanwhile. Run: node compile.cjs WORDS…
const { writeFileSync } = require('node:fs');
const { join } = require('node:path');

const dist = join(__dirname, '../../dist');
const { script } = require(join(dist, 'fettle.js'));

process.on('exit', () => writeFileSync(join(dist, 'fettle.compiled'), script.createCachedData()));
