/**
 * One form of an account or administration page, described once: how the page asks the server, and how the route
 * for forms that the browser sends itself does.
 */
import type { PostedForm, PostedTexts } from '#api/inputs/posted-form.ts';
import type { Text } from '#messages/text.ts';
import type { Problem } from '#ui/design-system/error-summary.tsx';

export interface AskedForm {
  /** In the address of the route. */
  readonly name: string;
  readonly about: readonly string[];
  /** Names of the controls. */
  readonly names: (about: PostedTexts) => readonly string[];
  /** Of these, what is never shown again. */
  readonly secrets?: readonly string[];
  readonly missing: (typed: PostedTexts, about: PostedTexts) => readonly Problem[];
  /** The procedure, by its path. */
  readonly path: string;
  readonly input: (typed: PostedTexts, about: PostedTexts) => Readonly<Record<string, unknown>>;
  readonly page: (about: PostedTexts) => string;
  /** Said where the page does not show by itself that it was taken. */
  readonly done?: (answer: unknown, typed: PostedTexts) => string;
  /** Leads on to another page. */
  readonly next?: (about: PostedTexts) => string;
}

interface Refused {
  readonly message: string;
  readonly data: {
    readonly problem: string | null;
    readonly text: Text | null;
    readonly refusals: readonly { readonly field: string; readonly reason: string; readonly text?: Text }[];
  };
}

type Call = { readonly [name: string]: Call } & { readonly mutate: (input: unknown) => Promise<unknown> };

const callAt = (client: unknown, path: string): Call =>
  path.split('.').reduce((at, name) => at[name] as Call, client as Call);

const problemsOf = ({ data, message }: Refused, names: readonly string[]) => {
  const own = data.refusals.map(({ field, reason, text = reason }) => ({
    field: field.replace(/^input\./, ''),
    text,
  }));
  return own.length > 0 ? own : [{ field: names[0] ?? 'posted', text: data.text ?? message }];
};

export const postedFromAsked = (form: AskedForm): PostedForm => ({
  about: form.about,
  page: form.page,
  typedIn: (sent, about) =>
    Object.fromEntries(
      form
        .names(about)
        .filter((name) => !form.secrets?.includes(name))
        .map((name) => [name, sent.get(name) ?? '']),
    ),
  send: async ({ client }, { about, sent }) => {
    const names = form.names(about);
    const typed = Object.fromEntries(names.map((name) => [name, sent.get(name) ?? '']));
    const missing = form.missing(typed, about);
    if (missing.length > 0) return { problems: missing };
    try {
      const answer = await callAt(client, form.path).mutate(form.input(typed, about));
      return form.next ? { page: form.next(about) } : { done: form.done?.(answer, typed) ?? '' };
    } catch (error) {
      const refused = error as Refused;
      // A fault of ours is the route's to tell.
      if (!refused.data) throw error;
      if (refused.data.problem === 'fresh-sign-in') return { needsProof: true };
      return { problems: problemsOf(refused, names) };
    }
  },
});
