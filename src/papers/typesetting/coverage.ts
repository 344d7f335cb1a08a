/** Which characters a font can show, read from its own table ("cmap", format 12 of OpenType). */

const tableAt = (font: Buffer, tag: string): number => {
  const count = font.readUInt16BE(4);
  for (let place = 0; place < count; place++) {
    const row = 12 + 16 * place;
    if (font.toString('latin1', row, row + 4) === tag) return font.readUInt32BE(row + 8);
  }
  throw new Error(`The font has no table "${tag}".`);
};

const wholeUnicode = 12;

const groupsAt = (font: Buffer): number => {
  const cmap = tableAt(font, 'cmap');
  const count = font.readUInt16BE(cmap + 2);
  for (let place = 0; place < count; place++) {
    const at = cmap + font.readUInt32BE(cmap + 4 + 8 * place + 4);
    if (font.readUInt16BE(at) === wholeUnicode) return at;
  }
  throw new Error('The font names no characters beyond the first plane.');
};

const charactersOf = (font: Buffer): ReadonlySet<number> => {
  const at = groupsAt(font);
  const found = new Set<number>();
  const count = font.readUInt32BE(at + 12);
  for (let place = 0; place < count; place++) {
    const row = at + 16 + 12 * place;
    for (let code = font.readUInt32BE(row); code <= font.readUInt32BE(row + 4); code++) found.add(code);
  }
  return found;
};

/** Characters that every one of the fonts can show. */
export const coveredBy = (fonts: readonly Buffer[]): ReadonlySet<number> => {
  const [first, ...others] = fonts.map(charactersOf);
  return new Set([...(first ?? [])].filter((code) => others.every((other) => other.has(code))));
};
