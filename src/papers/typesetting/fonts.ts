/**
 * The letters that papers are set in, from a package of the project and from nowhere else. The engine also
 * looks at the fonts of the machine; so the family gets a name that no machine has, and a paper has the same
 * bytes everywhere.
 */
import { readFileSync } from 'node:fs';
import path from 'node:path';

const files = [
  'DejaVuSans.ttf',
  'DejaVuSans-Bold.ttf',
  'DejaVuSansCondensed.ttf',
  'DejaVuSansCondensed-Bold.ttf',
] as const;

/** As long as the name it takes the place of: a font names its places by their bytes. */
const [packaged, own] = ['DejaVu', 'Papers'] as const;

/** A family of the templates: change it there as well. */
const renamed = (font: Buffer): Buffer => {
  const text = font.toString('latin1');
  const wide = (name: string) => [...name].map((letter) => `\0${letter}`).join('');
  return Buffer.from(text.replaceAll(packaged, own).replaceAll(wide(packaged), wide(own)), 'latin1');
};

const readFont = (name: string): Buffer =>
  readFileSync(path.join(process.cwd(), 'node_modules', 'dejavu-fonts-ttf', 'ttf', name));

let read: readonly Buffer[] | null = null;

export const paperFonts = (): readonly Buffer[] => {
  read ??= files.map((name) => renamed(readFont(name)));
  return read;
};
