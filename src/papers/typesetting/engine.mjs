/**
 * The engine on a thread of its own, so that the process goes on answering while a paper is set. Plain
 * JavaScript, loaded by its path: neither the build nor the commands put anything together for it.
 */
import { parentPort, workerData } from 'node:worker_threads';
import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler';

/**
 * @typedef {object} Job
 * @property {number} id
 * @property {string} template Path of the file.
 * @property {string} data JSON.
 * @property {readonly string[]} looks JSON of the look in each type size, the largest first.
 * @property {number} mostPages
 * @property {string | null} counted Label of the template that says how many pages are held to that.
 * @property {number} timestamp
 */

/** @type {{ readonly workspace: string, readonly fonts: readonly Uint8Array[] }} */
const { workspace, fonts } = workerData;

const compiler = NodeCompiler.create({
  workspace,
  fontArgs: [{ fontBlobs: fonts.map((font) => Buffer.from(font)) }],
});

/** Compiled sources the engine remembers. */
const remembered = 10;

/** A warning of the engine is a failure: an unknown font is no more than a warning to it. @param {Job} job @param {string} look */
const documentOf = ({ template, data }, look) => {
  const done = compiler.compile({ mainFilePath: template, inputs: { data, look } });
  const told = done.takeDiagnostics()?.shortDiagnostics ?? [];
  if (done.result && told.length === 0) return done.result;
  throw new Error(`The paper "${template}" could not be set: ${JSON.stringify(told)}`);
};

/** @param {ReturnType<typeof documentOf>} document @param {string | null} counted */
const countedPages = (document, counted) => {
  if (counted === null) return document.numOfPages;
  const [pages] = compiler.query(document, { selector: `<${counted}>`, field: 'value' });
  return pages ?? document.numOfPages;
};

/** The largest of the sizes that keeps to the pages; the smallest where none does: nothing is ever cut. @param {Job} job */
const fitting = (job) => {
  /** @param {number} place */
  const triedAt = (place) => {
    const document = documentOf(job, job.looks[place] ?? '');
    return { document, place, fits: countedPages(document, job.counted) <= job.mostPages };
  };
  let best = triedAt(0);
  if (best.fits || job.looks.length === 1) return best;
  let [low, high] = [1, job.looks.length - 1];
  while (low <= high) {
    const middle = Math.floor((low + high) / 2);
    const tried = triedAt(middle);
    if (tried.fits || middle === job.looks.length - 1) best = tried;
    if (tried.fits) high = middle - 1;
    else low = middle + 1;
  }
  return best;
};

/** @param {Job} job */
const set = (job) => {
  const { document, place } = fitting(job);
  const pdf = compiler.pdf(document, { pdfStandard: 'ua-1', creationTimestamp: job.timestamp });
  const pages = document.numOfPages;
  compiler.evictCache(remembered);
  return { pdf: new Uint8Array(pdf), pages, place };
};

parentPort?.on('message', (/** @type {Job} */ job) => {
  try {
    parentPort?.postMessage({ id: job.id, ...set(job) });
  } catch (fault) {
    parentPort?.postMessage({ id: job.id, fault: fault instanceof Error ? fault.message : String(fault) });
  }
});
