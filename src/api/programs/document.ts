/**
 * The OpenAPI 3.1 document of the interface for other programs, made from the schemas that the procedures themselves
 * are called and answer by.
 */
import { z } from 'zod';
import { type Exported, exported, interfaceRoot } from './exported.ts';
import { programsRouter } from './programs.ts';

type Schema = Readonly<Record<string, unknown>>;

interface Declared {
  readonly _def: { readonly inputs: readonly z.ZodType[]; readonly output?: z.ZodType };
}

const declaredOf = ({ procedure }: Exported) => {
  const { inputs, output } = (programsRouter[procedure] as unknown as Declared)._def;
  if (!output) throw new Error(`programs.${procedure} declares no output.`);
  return { inputs, output };
};

/**
 * What is new in an answer breaks nobody who ignores it, so that nothing is said to be closed; and a day is said by its
 * format, not by a pattern nobody can read.
 */
const open = ({ jsonSchema }: { jsonSchema: Record<string, unknown> }): void => {
  delete jsonSchema.additionalProperties;
  if (jsonSchema.format !== undefined) delete jsonSchema.pattern;
};

const schemaOf = (type: z.ZodType, io: 'input' | 'output'): Schema => {
  const { $schema: _, ...schema } = z.toJSONSchema(type, { io, target: 'draft-2020-12', override: open });
  return schema;
};

interface InputSchema {
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
}

/** What a procedure takes, by name, as JSON Schema. */
export const inputsOf = (one: Exported): readonly InputSchema[] =>
  declaredOf(one).inputs.map((type) => schemaOf(type, 'input') as InputSchema);

/** Every input of a procedure as parameters: a person stands in the path, the rest behind it. */
const parametersOf = (one: Exported): readonly Schema[] =>
  inputsOf(one).flatMap(({ properties = {}, required = [] }) => {
    return Object.entries(properties).map(([name, { description, ...schema }]) => {
      const isInPath = one.path.includes(`{${name}}`);
      return {
        name,
        in: isInPath ? 'path' : 'query',
        required: isInPath || required.includes(name),
        ...(description === undefined ? {} : { description }),
        schema,
      };
    });
  });

const json = (schema: Schema): Schema => ({ 'application/json': { schema } });
const refused = (description: string): Schema => ({
  description,
  content: json({ $ref: '#/components/schemas/Refusal' }),
});

const titleOf = ({ procedure }: Exported): string =>
  `${procedure.slice(0, 1).toUpperCase()}${procedure.slice(1)}`;

const operationOf = (one: Exported): Schema => ({
  operationId: one.procedure,
  summary: one.summary,
  description: `The token names "${one.scope}".`,
  parameters: parametersOf(one),
  responses: {
    200: {
      description: one.summary,
      content: json({ $ref: `#/components/schemas/${titleOf(one)}` }),
    },
    400: refused('A parameter is not as described here.'),
    401: refused('No token, or one that is unknown, withdrawn or run out.'),
    403: refused('The token does not name this, or the record is kept to its care team.'),
    404: refused('The clinic has no such person.'),
    429: refused('Asked too often; `Retry-After` says how many seconds to wait.'),
    503: refused('What would be read could not be written into the audit, so it is not told.'),
  },
});

const refusal = z.object({
  problem: z.string().describe('A word for programs.'),
  message: z.string().describe('A sentence for people.'),
});

const about = `What a clinic keeps, for its other programs. To read alone: nothing is changed by it.
Whatever it tells is for a licensed clinician to act on; a dose is shown with its cautions or not at all.
null means not asked, not answered or not known, never zero. Fields may be added to an answer without notice; a program
ignores those it does not know. Each reading stands in the audit, and the patient sees the name of the program.`;

export const interfaceDocument = () => ({
  openapi: '3.1.0',
  info: { title: 'Loadgate, for other programs', version: '1', description: about },
  servers: [{ url: interfaceRoot, description: 'On the address of the clinic’s own server.' }],
  security: [{ token: [] }],
  paths: Object.fromEntries(exported.map((one) => [one.path, { get: operationOf(one) }])),
  components: {
    securitySchemes: {
      token: {
        type: 'http',
        scheme: 'bearer',
        description: 'Made by an administrator of the clinic, shown once.',
      },
    },
    schemas: {
      Refusal: schemaOf(refusal, 'output'),
      ...Object.fromEntries(
        exported.map((one) => [titleOf(one), schemaOf(declaredOf(one).output, 'output')]),
      ),
    },
  },
});
