/** Every form that works before its page’s scripts have come, by its name in the address. */
import type { PostedForm } from '#api/inputs/posted-form.ts';
import { postedFrom } from '#ui/clinician/forms/sent/posted-from.ts';
import { sentForms } from '#ui/clinician/forms/sent/sent-forms.ts';
import { signInForms } from './sign-in-forms.ts';

export const postedForms: ReadonlyMap<string, PostedForm> = new Map<string, PostedForm>([
  ...Object.entries(signInForms),
  ...sentForms.map((form) => [form.name, postedFrom(form)] as const),
]);
