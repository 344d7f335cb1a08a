/** The same pages with every entry let in at once, to compare with. Not a way to serve a clinic. */
import { readEnvironment } from '../../environment.mjs';
import { startPages } from '../../server/http-server.mjs';
import { quietEnvironment } from '../../setup.mjs';

process.umask(0o077);
Object.assign(process.env, quietEnvironment, { NODE_ENV: 'production' });
const running = await startPages(readEnvironment(), (pages) => pages);
process.on('SIGTERM', () => running.end().then(() => process.exit(0)));
