/**
 * Dead code: what no way in reaches. Asked twice by tests/architecture/dead-code.test.ts: of the product alone
 * (`--production`: nothing counts that only tests use), and of everything, where an export must be
 * imported by somebody.
 */
const isProduct = process.argv.includes('--production');

/** "!" marks what belongs to the product. */
export default {
  // Used in its own file, a thing lives; whether it must be exported is the second question.
  ignoreExportsUsedInFile: isProduct,
  // A way in may hold nothing for tests alone either.
  includeEntryExports: isProduct,
  entry: [
    // What `npm run` starts by name, and what those start as processes of their own.
    'src/commands/*.ts!',
    'src/commands/exchange/*.ts!',
    'src/commands/team/*.ts!',
    'src/commands/{run,demo,build,serve}.mjs!',
    'src/commands/team/test.mjs!',
    // Started as a process of its own, to compare with.
    'src/commands/team/crowd/without-turns.mjs!',
    // Started as a process of its own, to be ended hard.
    'src/commands/team/server-kills/killed-step.ts!',
    // A thread of its own, begun by its path.
    'src/papers/typesetting/engine.mjs!',
    'src/data/replay/thread.mjs!',
    'src/data/replay/in-thread.ts!',
    // Fetched by the tag of the language.
    'src/messages/*/language.ts!',
    // The year-long stories are for the engine alone; tests play them.
    'demo-clinic/long-stories/{ten,follow-a-year}.ts!',
    // Fetched by the tag of a language.
    'src/messages/*/language.ts!',
    'src/messages/*/pages/*.ts!',
    'drizzle/config.ts',
    'tests/**/*.{test,spec}.{ts,tsx}',
    'tests/vitest.config.ts',
    'tests/browser/playwright.config.ts',
    // Read by the tag of a language.
    'tests/messages/spoken/*.ts',
    // Read by name, one a sheet, by the ledger of published figures.
    'tests/core/**/left-out*.ts',
  ],
  project: ['src/**/*.{ts,tsx,mjs,js}!', 'demo-clinic/**/*.ts!', 'drizzle/*.ts', 'tests/**/*.{ts,tsx,js}'],
  // Programs of the machine, tried where they are installed.
  ignoreBinaries: ['openssl', 'systemd-analyze'],
  ignoreDependencies: [
    // Started by its path, not imported.
    '@biomejs/biome',
    // Letters, read as files and not imported.
    'dejavu-fonts-ttf',
    // Types of a standard whose package has the name of another one.
    '@types/fhir',
    // Outside oracles without types, loaded by `require`.
    '@solarahealth/fhir-r4',
    'jstat',
    'ml-regression-theil-sen',
  ],
};
