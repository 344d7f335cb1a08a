/**
 * A file one can read in a sitting: 200 lines, 300 when it is a table of data or of test cases; a
 * function 50; a page 40.
 */
import { describe, expect, it } from 'vitest';
import { codeFiles, lineOf, type Node, parse, textOf, treeOf, walk } from './repository.ts';

const ceilings = { function: 50, page: 40, file: 200, table: 300 };

/** Longer on purpose, each with its reason. */
const allowed: ReadonlyMap<string, string> = new Map([
  [
    'src/core/decision/facts/facts-from-record.ts',
    'One function lists every fact by name; split, a forgotten fact would not be seen.',
  ],
  ['src/simulation/raises/random-facts.ts', 'The same list, each fact with its random values.'],
]);

/** Rows of data by their nature, though written as calls. */
const tableFolders: ReadonlyMap<string, string> = new Map([
  [
    'src/data/schema/',
    'Columns and constraints of the tables; one file for each group that is read together.',
  ],
]);

const lineCount = (text: string): number => text.trimEnd().split('\n').length;

const isFunction = (node: Node): boolean =>
  ['FunctionDeclaration', 'FunctionExpression', 'ArrowFunctionExpression'].includes(node.type);

const linesOf = (node: Node, text: string): number => lineCount(text.slice(node.start, node.end));

/** Lines inside the outermost literals of the file: rows of data rather than steps of a program. */
const tableLines = (tree: Node, text: string): number => {
  const visit = (node: Node): number => {
    if (isFunction(node)) return 0;
    if (['ArrayExpression', 'ObjectExpression'].includes(node.type)) return linesOf(node, text);
    let sum = 0;
    for (const child of Object.values(node).flat()) {
      if (typeof child === 'object' && child !== null && 'type' in child) sum += visit(child as Node);
    }
    return sum;
  };
  return visit(tree);
};

const fileCeiling = (file: string, tree: Node, text: string): number => {
  if (/\/page\.tsx$/.test(file)) return ceilings.page;
  const isOfRows = [...tableFolders.keys()].some((folder) => file.startsWith(folder));
  if (isOfRows || /\.test\.tsx?$/.test(file)) return ceilings.table;
  return tableLines(tree, text) >= 0.6 * lineCount(text) ? ceilings.table : ceilings.file;
};

const longFunctions = (tree: Node, text: string) =>
  [...walk(tree)].filter((node) => isFunction(node) && linesOf(node, text) > ceilings.function);

describe('files and functions stay within their ceilings', () => {
  it('files', () => {
    const found = codeFiles('src', 'demo-clinic', 'tests')
      .filter((file) => !allowed.has(file))
      .map((file) => ({
        file,
        lines: lineCount(textOf(file)),
        most: fileCeiling(file, treeOf(file), textOf(file)),
      }))
      .filter(({ lines, most }) => lines > most)
      .map(({ file, lines, most }) => `${file}: ${lines} lines, at most ${most}`);
    expect(found).toEqual([]);
  });

  it('functions', () => {
    const found = codeFiles('src', 'demo-clinic').flatMap((file) =>
      longFunctions(treeOf(file), textOf(file)).map(
        (node) => `${file}:${lineOf(file, node.start)}: ${linesOf(node, textOf(file))} lines`,
      ),
    );
    expect(found).toEqual([]);
  });

  it('would find a function of 51 lines and passes one of 50', () => {
    const withLines = (lines: number) => `const f = () => {\n${'  g();\n'.repeat(lines - 2)}};\n`;
    expect(longFunctions(parse(withLines(51), 'x.ts'), withLines(51))).toHaveLength(1);
    expect(longFunctions(parse(withLines(50), 'x.ts'), withLines(50))).toHaveLength(0);
  });

  it('gives the higher ceiling to a file of rows only', () => {
    const table = `export const rows = [\n${'  1,\n'.repeat(30)}];\n`;
    const program = `export const f = () => {\n${'  g();\n'.repeat(30)}};\n`;
    expect(fileCeiling('src/core/x.ts', parse(table, 'x.ts'), table)).toBe(300);
    expect(fileCeiling('src/core/x.ts', parse(program, 'x.ts'), program)).toBe(200);
  });
});
