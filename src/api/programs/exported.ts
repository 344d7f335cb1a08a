/** The procedures that other programs call, by their addresses. What is not on this list no program reaches. */
import type { TokenScope } from '#core/clinic/token-scopes.ts';

export interface Exported {
  /** Name of the procedure within `programs`. */
  readonly procedure: 'people' | 'plan' | 'sessions' | 'mornings' | 'measurements' | 'decisions' | 'worklist';
  /** Below the root of the interface; `{patientId}` is taken from it. */
  readonly path: string;
  readonly scope: TokenScope;
  readonly summary: string;
}

export const exported: readonly Exported[] = [
  {
    procedure: 'people',
    path: '/people',
    scope: 'people',
    summary: 'People of the clinic, and when anything of each was last written',
  },
  {
    procedure: 'plan',
    path: '/people/{patientId}/plan',
    scope: 'plans',
    summary: 'What is signed and in force today, with every caution',
  },
  {
    procedure: 'sessions',
    path: '/people/{patientId}/sessions',
    scope: 'sessions',
    summary: 'Sessions as they were sent',
  },
  {
    procedure: 'mornings',
    path: '/people/{patientId}/mornings',
    scope: 'mornings',
    summary: 'Answers of mornings as they were sent',
  },
  {
    procedure: 'measurements',
    path: '/people/{patientId}/measurements',
    scope: 'measurements',
    summary: 'Measurements, those entered in error marked',
  },
  {
    procedure: 'decisions',
    path: '/people/{patientId}/decisions',
    scope: 'decisions',
    summary: 'What the rules decided, with the rules that led to it',
  },
  {
    procedure: 'worklist',
    path: '/worklist',
    scope: 'worklist',
    summary: 'Who needs a clinician, most pressing first',
  },
];

export const interfaceRoot = '/api/programs/v1';

/** The procedure an address names, with the person in it; null where it names none. */
export const exportedAt = (
  path: string,
): { readonly one: Exported; readonly patientId: string | null } | null => {
  const parts = path.split('/');
  for (const one of exported) {
    const wanted = one.path.split('/');
    if (wanted.length !== parts.length) continue;
    const place = wanted.indexOf('{patientId}');
    if (wanted.every((part, at) => at === place || part === parts[at]))
      return { one, patientId: place === -1 ? null : parts[place]! };
  }
  return null;
};
