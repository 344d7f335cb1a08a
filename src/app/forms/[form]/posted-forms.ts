/** Every form that works before its page’s scripts have come, by its name in the address. */
import type { PostedForm } from '#api/inputs/posted-form.ts';
import { changePassphrase } from '#ui/account/account-forms.ts';
import { postedFromAsked } from '#ui/account/asked-form.ts';
import { addSite, addStaff, nameCoveringClinician, writeWording } from '#ui/admin/admin-forms.ts';
import { addToTeam, openInEmergency } from '#ui/clinician/access/access-forms.ts';
import { postedFrom } from '#ui/clinician/forms/sent/posted-from.ts';
import { sentForms } from '#ui/clinician/forms/sent/sent-forms.ts';
import { makeProgramToken } from '#ui/clinician/programs/token-form-sent.ts';
import { signInForms } from './sign-in-forms.ts';

const askedForms = [
  addSite,
  addStaff,
  makeProgramToken,
  addToTeam,
  changePassphrase,
  nameCoveringClinician,
  openInEmergency,
  writeWording,
];

export const postedForms: ReadonlyMap<string, PostedForm> = new Map<string, PostedForm>([
  ...Object.entries(signInForms),
  ...askedForms.map((form) => [form.name, postedFromAsked(form)] as const),
  ...sentForms.map((form) => [form.name, postedFrom(form)] as const),
]);
