/** What the commands tell people. All of it goes to standard error, so that results stay alone on standard output. */

/** @param {string} text */
export const say = (text) => {
  process.stderr.write(`loadgate: ${text}\n`);
};

/** A condition the person at the keyboard can put right; told without a stack trace. */
export class CannotGoOn extends Error {
  /**
   * @param {string} message
   * @param {number} [exitCode]
   */
  constructor(message, exitCode = 1) {
    super(message);
    this.exitCode = exitCode;
  }
}

/**
 * Runs a command's body and turns its end into an exit code.
 * @param {() => Promise<number | void> | number | void} body
 */
export const runCommand = async (body) => {
  try {
    process.exitCode = (await body()) ?? 0;
  } catch (error) {
    if (!(error instanceof CannotGoOn)) throw error;
    say(error.message);
    process.exitCode = error.exitCode;
  }
};
