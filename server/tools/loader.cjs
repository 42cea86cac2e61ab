// Becomes dist/fettle.js: loads the bundled command with the code that V8 compiled when it was built. Compiled code for
// another version of Node is turned down by V8 itself, and the bundle is compiled afresh.
const { readFileSync } = require('node:fs');
const { join } = require('node:path');
const { Script } = require('node:vm');

const filename = join(__dirname, 'fettle.bundle.js');

function compiled() {
  try {
    return readFileSync(join(__dirname, 'fettle.compiled'));
  } catch {
    return undefined;
  }
}

const source = `(function (exports, require, module, __filename, __dirname) {${readFileSync(filename, 'utf8')}\n})`;
const script = new Script(source, { filename, cachedData: compiled() });
script.runInThisContext()(exports, require, module, filename, __dirname);
exports.script = script;
