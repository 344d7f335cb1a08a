/** English words that not every page carries: each file of them teaches its own, and `say` finds them here. */
let taught: Readonly<Record<string, string>> = {};

export const teach = (more: Readonly<Record<string, string>>): void => {
  taught = { ...taught, ...more };
};

export const taughtWord = (key: string): string | undefined => taught[key];
