/** What a text control of a form needs of the form that keeps what is typed. */

export interface TypedForm {
  readonly typed: Readonly<Record<string, string | undefined>>;
  readonly onType: (name: string, text: string) => void;
  readonly errorOf: (name: string) => string | undefined;
}

export const boundField = ({ typed, onType, errorOf }: TypedForm, name: string) => ({
  name,
  value: typed[name] ?? '',
  error: errorOf(name),
  onChange: (event: { readonly target: { readonly value: string } }) => onType(name, event.target.value),
});
