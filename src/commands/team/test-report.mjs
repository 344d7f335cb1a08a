/** What `npm test` says at its end, and its exit code. */

/**
 * @typedef {object} Result
 * @property {string} name
 * @property {number} seconds
 * @property {number} passed
 * @property {number} failed
 * @property {number} skipped
 * @property {readonly string[]} [failures]
 * @property {string} [note]
 * @property {boolean} [toolMissing]
 */

/** A build server has every tool; what is skipped there for want of one has not been tested. */
export const failOnMissingTool = (counts, isCi) =>
  counts.toolMissing && isCi ? { ...counts, failed: counts.failed + 1, skipped: 0 } : counts;

const rowOf = ({ name, seconds, passed, failed, skipped, note }, budget) => {
  const remark = [seconds > budget ? 'over its budget' : '', note ?? ''].filter(Boolean).join('; ');
  return [name, seconds.toFixed(1), budget, passed, failed, skipped, remark].map(String);
};

/**
 * One line for each part, in columns.
 * @param {readonly Result[]} results
 * @param {Readonly<Record<string, number>>} budgets seconds by part
 */
export const tableOf = (results, budgets) => {
  const head = ['part', 'seconds', 'budget', 'passed', 'failed', 'skipped', ''];
  const all = [head, ...results.map((result) => rowOf(result, budgets[result.name]))];
  const widths = head.map((_, column) => Math.max(...all.map((row) => row[column].length)));
  const isFigure = (column) => column > 0 && column < head.length - 1;
  const pad = (cell, column) =>
    isFigure(column) ? cell.padStart(widths[column]) : cell.padEnd(widths[column]);
  return all.map((row) => row.map(pad).join('  ').trimEnd()).join('\n');
};

/** Each failure of each part once more, so that nobody searches a long record for it; '' where none is. */
export const failuresText = (results) => {
  const failures = results.flatMap((part) => (part.failures ?? []).map((told) => `${part.name} | ${told}`));
  return failures.length === 0 ? '' : ['What failed', ...failures].join('\n\n');
};

const total = (results, name) => results.reduce((sum, result) => sum + result[name], 0);

/** The last line, alone: the sums over all runners. */
export const closingLine = (results) =>
  `${total(results, 'passed')} passed, ${total(results, 'failed')} failed, ${total(results, 'skipped')} skipped`;

/** A run in which nothing passed has shown nothing. */
export const exitCodeOf = (results) =>
  total(results, 'failed') > 0 || total(results, 'passed') === 0 ? 1 : 0;
