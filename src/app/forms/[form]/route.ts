/** Forms that the browser sends itself, before the page’s scripts have come. */
import { formHandler } from '#server/http/forms/form-handler.ts';
import { runtime } from '#server/runtime.ts';
import { postedForms } from './posted-forms.ts';

interface Address {
  readonly params: Promise<{ readonly form: string }>;
}

export const POST = async (request: Request, { params }: Address) =>
  formHandler(runtime(), request, { name: (await params).form, forms: postedForms });
