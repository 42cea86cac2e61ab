// VS Code's own server part with the packed extension installed in it, in a process group of its own.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { runGroup, startGroup } from '../../tools/group.mjs';
import { removeFolder, temporaryFolder } from '../support/scenario';

export interface Workbench {
  /** `127.0.0.1:PORT`. */
  authority: string;
  /** Scratch folder, removed at the end. */
  scratch: string;
  /** Replaces the user's settings; holds for pages opened afterwards. */
  configure(settings: Record<string, unknown>): void;
  /** What the server printed. */
  log(): string;
  end(): Promise<void>;
}

const INSTALL_LIMIT_MS = 60_000;
const START_LIMIT_MS = 30_000;
const LIFE_LIMIT_MS = 600_000;

const quiet = {
  'telemetry.telemetryLevel': 'off',
  'update.mode': 'none',
  'extensions.autoUpdate': false,
  'extensions.autoCheckUpdates': false,
  'extensions.ignoreRecommendations': true,
  'workbench.startupEditor': 'none',
  'workbench.enableExperiments': false,
  'workbench.tips.enabled': false,
  'chat.disableAIFeatures': true,
  'chat.commandCenter.enabled': false,
  'security.workspace.trust.enabled': false,
  'security.workspace.trust.startupPrompt': 'never',
  'git.enabled': false,
};

/** Installs `vsix` and starts the server. Throws with the server's own words when it does not come up. */
export async function startWorkbench(folder: string, vsix: string): Promise<Workbench> {
  const scratch = temporaryFolder('workbench');
  const data = join(scratch, 'data');
  const environment = serverEnvironment(scratch);
  const common = [
    join(folder, 'out/server-main.js'),
    '--server-data-dir',
    data,
    '--extensions-dir',
    join(scratch, 'extensions'),
    '--accept-server-license-terms',
    '--telemetry-level',
    'off',
  ];
  const installed = await runGroup(process.execPath, [...common, '--install-extension', vsix], {
    limitMs: INSTALL_LIMIT_MS,
    env: environment,
  });
  if (!installed.output.includes('was successfully installed')) {
    removeFolder(scratch);
    throw new Error(`The workbench did not install ${vsix} (status ${installed.status}):\n${installed.output}`);
  }
  const serve = ['--host', '127.0.0.1', '--port', '0', '--without-connection-token', '--enable-smoke-test-driver'];
  const server = startGroup(process.execPath, [...common, ...serve], {
    limitMs: LIFE_LIMIT_MS,
    scratch,
    env: environment,
  });
  const end = async () => {
    await server.end();
    removeFolder(scratch);
  };
  try {
    const port = await listeningPort(server);
    return {
      authority: `127.0.0.1:${port}`,
      scratch,
      configure: (settings) => writeSettings(data, settings),
      log: server.output,
      end,
    };
  } catch (error) {
    await end();
    throw error;
  }
}

/** No gallery to ask, a home of its own, nothing inherited that an editor we may run inside of has set. */
function serverEnvironment(home: string): NodeJS.ProcessEnv {
  const kept = Object.entries(process.env).filter(
    ([name]) => !/^(VSCODE_|ELECTRON_|VITEST|NODE_OPTIONS$|NODE_ENV$)/.test(name),
  );
  return {
    ...Object.fromEntries(kept),
    HOME: home,
    EXTENSIONS_GALLERY: '{"serviceUrl":"","itemUrl":"","resourceUrlTemplate":""}',
  };
}

async function listeningPort(server: ReturnType<typeof startGroup>): Promise<string> {
  let over = false;
  void server.ended.then(() => (over = true));
  for (const start = Date.now(); !over && Date.now() - start < START_LIMIT_MS; ) {
    const port = /agent listening on (\d+)/.exec(server.output())?.[1];
    if (port) return port;
    await new Promise((resolve) => setTimeout(resolve, 25));
  }
  throw new Error(`The workbench's server did not start listening:\n${server.output()}`);
}

function writeSettings(data: string, settings: Record<string, unknown>): void {
  const folder = join(data, 'data/User');
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'settings.json'), JSON.stringify({ ...quiet, ...settings }, undefined, 2));
}
