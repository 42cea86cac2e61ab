// Becomes dist/fettle.js: has Node keep what it compiles of the bundled command, where Node can do so (from 22.8 on).
require('node:module').enableCompileCache?.();
require('./fettle.bundle.js');
