/**
 * The server itself: what comes in is bounded and told where it comes from before the page framework sees it, and
 * what is under way is finished when the process is asked to end.
 */
import { createServer } from 'node:http';
import { dataHeaders, fixedHeaders } from '#server/http/fixed-headers.mjs';
import { root } from '../paths.mjs';
import { CannotGoOn } from '../say.mjs';
import { inTurn } from './admission.mjs';
import { arrivals } from './arrivals.mjs';
import { addressesIn, networkOfPeer } from './forwarded.mjs';

/** A browser has sent its headers long before, and a phone on a poor line its entry. */
const limits = {
  headersTimeout: 10_000,
  requestTimeout: 30_000,
  keepAliveTimeout: 20_000,
  connectionsCheckingInterval: 5000,
};

/** More than a clinic's browsers and phones hold open; beyond, a proxy is told to wait. */
const mostConnections = 1000;

/** Answers under way get this long before the process ends all the same. */
const endingMilliseconds = 10_000;

const methods = ['GET', 'HEAD', 'POST', 'OPTIONS'];

/** The page framework answers what it does not know with a fault. */
const refuseMethod = (response) => {
  response.statusCode = 405;
  response.setHeader('Allow', methods.join(', '));
  for (const { key, value } of [...fixedHeaders, ...dataHeaders]) response.setHeader(key, value);
  response.end();
};

/**
 * @param {(request: import('node:http').IncomingMessage, response: import('node:http').ServerResponse) => void} pages
 * @param {import('node:net').BlockList} trusted
 * @param {typeof inTurn} turns who is let in when
 */
export const bounded = (pages, trusted, turns = inTurn) => {
  const { came, settled } = arrivals();
  const answer = turns(pages, settled);
  const server = createServer(limits, (request, response) => {
    const { headers, method = '', socket } = request;
    if (!methods.includes(method)) return refuseMethod(response);
    headers['x-forwarded-for'] = networkOfPeer(
      trusted,
      socket.remoteAddress ?? '',
      headers['x-forwarded-for'],
    );
    answer(request, response);
  });
  server.on('connection', came);
  server.maxConnections = mostConnections;
  return server;
};

const listening = (server, options) =>
  new Promise((resolve, reject) => {
    server.once('error', (error) =>
      reject(
        new CannotGoOn(`The server cannot listen on ${options.host}, port ${options.port} (${error.code}).`),
      ),
    );
    server.listen(options, () => resolve(server));
  });

/** Takes nothing new, lets what is under way finish, and closes. */
export const closed = (server) =>
  new Promise((resolve) => {
    const last = setTimeout(() => server.closeAllConnections(), endingMilliseconds);
    // A connection that has had its answer would otherwise be kept open for the next request.
    const idle = setInterval(() => server.closeIdleConnections(), 50);
    server.close(() => {
      clearTimeout(last);
      clearInterval(idle);
      resolve(undefined);
    });
  });

/** Counts for a monitoring program, on an address of their own that no proxy hands on. */
const countsServer = ({ host, port }) =>
  listening(
    createServer(limits, (request, response) => {
      const isAsked = request.method === 'GET' && request.url === '/metrics';
      response.statusCode = isAsked ? 200 : 404;
      response.setHeader('Content-Type', 'text/plain; version=0.0.4; charset=utf-8');
      response.end(isAsked ? (globalThis.loadgateTelemetry?.metrics.text() ?? '') : 'Not found\n');
    }),
    { host, port },
  );

/**
 * Starts the pages on what was built, in this process. The start hook of the pages ends the process with the
 * reason when the file, its keys or its schema are not as they must be.
 * @param {import('../environment.mjs').Settings} settings
 * @param {typeof inTurn} turns
 */
export const startPages = async (settings, turns = inTurn) => {
  process.chdir(root);
  const { default: next } = await import('next');
  const host = settings.HOST.replace(/^\[|\]$/g, '');
  const app = next({ dev: false, dir: root, hostname: host, port: settings.PORT });
  await app.prepare();
  const pages = app.getRequestHandler();
  const server = bounded(pages, addressesIn(settings.TRUSTED_PROXY), turns);
  const servers = [await listening(server, { host, port: settings.PORT })];
  if (settings.METRICS_ADDRESS) servers.push(await countsServer(settings.METRICS_ADDRESS));
  return {
    end: async () => {
      await Promise.all(servers.map(closed));
      await globalThis.loadgateEnd?.();
    },
  };
};
