/**
 * The settings that come from the environment: their names, defaults and what each may be.
 * Checked once at start; every wrong one is named, so that a mistake is not found one by one.
 */
import { accessSync, constants, existsSync, statSync } from 'node:fs';
import path from 'node:path';
import { CannotGoOn } from './say.mjs';
import { addressesIn } from './server/forwarded.mjs';

/**
 * @typedef {object} Settings
 * @property {number} PORT
 * @property {string} HOST
 * @property {string} DATABASE_FILE
 * @property {boolean} DEMO
 * @property {string} PUBLIC_ORIGIN
 * @property {boolean} JOBS
 * @property {string[]} TRUSTED_PROXY
 * @property {{ host: string, port: number } | null} METRICS_ADDRESS
 * @property {string | null} ENCRYPTION_KEY_FILE
 * @property {string | null} AUDIT_KEY_FILE
 * @property {string | null} BACKUP_KEY_FILE
 * @property {string | null} CLINIC_NOW
 */

const localHosts = ['localhost', '127.0.0.1', '::1', '[::1]'];

const port = (text) => {
  const value = Number(text);
  return /^\d+$/.test(text) && value >= 1 && value <= 65_535
    ? { value }
    : { problem: 'is a whole number from 1 to 65535' };
};

const flag = (text) => (text === '0' || text === '1' ? { value: text === '1' } : { problem: 'is 0 or 1' });

const host = (text) =>
  /^[A-Za-z0-9.:[\]-]+$/.test(text) ? { value: text } : { problem: 'is a host name or an IP address' };

const databaseFile = (text) => {
  if (text.trim() === '' || text.includes('\0')) return { problem: 'is the path of a file' };
  if (existsSync(text) && statSync(text).isDirectory()) return { problem: 'names a folder; give a file' };
  return { value: text };
};

const origin = (text) => {
  const url = URL.canParse(text) ? new URL(text) : null;
  if (!url || url.origin !== text.replace(/\/$/, '')) {
    return { problem: 'is scheme, host and port only, such as https://clinic.example' };
  }
  const isLocal = localHosts.includes(url.hostname);
  return url.protocol === 'https:' || (url.protocol === 'http:' && isLocal)
    ? { value: url.origin }
    : { problem: 'starts with https:// unless it is this machine' };
};

const proxies = (text) => {
  if (text === 'none') return { value: [] };
  const value = text.split(/[\s,]+/).filter(Boolean);
  return addressesIn(value)
    ? { value }
    : { problem: 'is addresses or ranges of your proxies, such as 127.0.0.1 or 10.0.0.0/8, or none' };
};

const localAddress = (text) => {
  const [, address = '', number = ''] = /^(127\.0\.0\.1|\[::1\]):(\d{1,5})$/.exec(text) ?? [];
  const { value } = port(number);
  return value
    ? { value: { host: address.replace(/^\[|\]$/g, ''), port: value } }
    : { problem: 'is an address of this machine with a port of its own, such as 127.0.0.1:9464' };
};

const readableFile = (text) => {
  try {
    accessSync(text, constants.R_OK);
    return statSync(text).isFile() ? { value: text } : { problem: 'names something that is not a file' };
  } catch {
    return { problem: 'names a file that cannot be read' };
  }
};

const instant = (text) =>
  /^\d{4}-\d\d-\d\dT\d\d:\d\d(:\d\d(\.\d+)?)?(Z|[+-]\d\d:\d\d)$/.test(text) && !Number.isNaN(Date.parse(text))
    ? { value: text }
    : { problem: 'is an ISO instant with its offset, such as 2026-03-02T09:00:00+01:00' };

/** Name, default (null: not set) and reader of each setting. */
const settings = [
  ['PORT', '3000', port],
  ['HOST', '127.0.0.1', host],
  ['DATABASE_FILE', path.join('.local', 'clinic.sqlite'), databaseFile],
  ['DEMO', '0', flag],
  ['PUBLIC_ORIGIN', null, origin],
  ['JOBS', '1', flag],
  ['TRUSTED_PROXY', 'none', proxies],
  ['METRICS_ADDRESS', null, localAddress],
  ['ENCRYPTION_KEY_FILE', null, readableFile],
  ['AUDIT_KEY_FILE', null, readableFile],
  ['BACKUP_KEY_FILE', null, readableFile],
  ['CLINIC_NOW', null, instant],
];

/** @param {Readonly<Record<string, string | undefined>>} env */
const readAll = (env) => {
  const values = {};
  const problems = [];
  for (const [name, fallback, read] of settings) {
    const text = env[name] || fallback;
    if (text === null) {
      values[name] = null;
      continue;
    }
    const { value, problem } = read(text);
    if (problem) problems.push(`${name} ${problem}; it is set to "${text}".`);
    values[name] = value;
  }
  return { values, problems };
};

/**
 * Reads and checks every setting. Throws CannotGoOn that names each wrong one.
 * @param {Readonly<Record<string, string | undefined>>} env
 * @returns {Settings}
 */
export const readEnvironment = (env = process.env) => {
  const { values, problems } = readAll(env);
  if (values.CLINIC_NOW && !values.DEMO && problems.length === 0) {
    problems.push('CLINIC_NOW sets the clinical clock and works only with DEMO=1.');
  }
  if (problems.length > 0) throw new CannotGoOn(`Settings to put right:\n  ${problems.join('\n  ')}`);
  const shownHost =
    values.HOST.includes(':') && !values.HOST.startsWith('[') ? `[${values.HOST}]` : values.HOST;
  values.PUBLIC_ORIGIN ??= `http://${shownHost}:${values.PORT}`;
  return /** @type {Settings} */ (values);
};
