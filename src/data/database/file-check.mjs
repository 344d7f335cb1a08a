/**
 * Whether a database file is whole, looked at page by page and text by text. The driver ends the process that
 * reads a text whose bytes are none, so the texts are read as bytes here; `serve` and `check-file` run this in a
 * process of its own all the same: `node src/data/database/file-check.mjs FILE` prints one finding a line.
 */
import { isUtf8 } from 'node:buffer';
import { pathToFileURL } from 'node:url';
import Client from 'libsql';

const mostTold = 20;
const pageSize = 2000;
const quoted = (name) => `"${name.replaceAll('"', '""')}"`;

/** @param {Client.Database} client */
const damagedPages = (client) =>
  client
    .pragma(`integrity_check(${mostTold})`)
    .map((row) => row.integrity_check)
    .filter((text) => text !== 'ok')
    .map((text) => `damaged: ${text}`);

const strayRows = (client) =>
  client
    .pragma('foreign_key_check')
    .slice(0, mostTold)
    .map(({ table, rowid, parent }) => `${table}, row ${rowid}: names a row of ${parent} that is not there`);

const tablesIn = (client) =>
  client
    .prepare("SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%' ORDER BY name")
    .all()
    .map(({ name }) => name);

/** Columns that are not numbers by their declaration; a text may stand in each. */
const textColumnsOf = (client, table) =>
  client
    .pragma(`table_info(${quoted(table)})`)
    .filter(({ type }) => !/^(integer|real)$/i.test(type))
    .map(({ name }) => name);

const isText = (bytes) => bytes === null || isUtf8(bytes);

/** Rows of one table with a text that is none. */
function* brokenTextsOf(client, table) {
  const columns = textColumnsOf(client, table);
  if (columns.length === 0) return;
  const bytes = columns.map((name, place) => `CAST(${quoted(name)} AS BLOB) AS c${place}`).join(', ');
  const page = client.prepare(
    `SELECT rowid AS place, ${bytes} FROM ${quoted(table)} WHERE rowid > ? ORDER BY rowid LIMIT ${pageSize}`,
  );
  let last = Number.MIN_SAFE_INTEGER;
  for (;;) {
    const rows = page.all(last);
    for (const row of rows) {
      const wrong = columns.filter((_, place) => !isText(row[`c${place}`]));
      for (const name of wrong) yield `${table}, row ${row.place}: the bytes in ${name} are no text`;
    }
    if (rows.length < pageSize) return;
    last = rows.at(-1).place;
  }
}

const brokenTexts = (client) => {
  const found = [];
  for (const table of tablesIn(client)) {
    for (const one of brokenTextsOf(client, table)) {
      found.push(one);
      if (found.length >= mostTold) return found;
    }
  }
  return found;
};

/** A check that cannot go on is a finding itself, and the next one is made all the same. */
const foundBy = (check, client) => {
  try {
    return check(client);
  } catch (error) {
    return [`${error.message} (${error.code ?? 'no code'})`];
  }
};

/**
 * @typedef {object} FileFindings
 * @property {string[]} damage what makes reading the file dangerous or its contents doubtful
 * @property {string[]} strays rows that name rows which are not there
 */

/**
 * What is wrong with a file, the first few of each kind.
 * @param {string} file
 * @returns {FileFindings}
 */
export const findingsInFile = (file) => {
  let client;
  try {
    client = new Client(file, { timeout: 5000 });
    client.pragma('query_only = ON');
    const damage = foundBy(damagedPages, client);
    // Where pages are damaged, whatever else is read of them is chance.
    if (damage.length > 0) return { damage, strays: [] };
    return { damage: foundBy(brokenTexts, client), strays: foundBy(strayRows, client) };
  } catch (error) {
    return { damage: [`${error.message} (${error.code ?? 'no code'})`], strays: [] };
  } finally {
    client?.close();
  }
};

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  const { damage, strays } = findingsInFile(process.argv[2] ?? '');
  const findings = [...damage, ...strays];
  for (const one of findings) process.stdout.write(`${one}\n`);
  process.exitCode = findings.length > 0 ? 1 : 0;
}
