/** A warning sign and a pause as the patient reads them. Each sentence says how things stand and no more. */
import type { Language } from '../../language.ts';

export const danger = {
  reported:
    'Sie haben uns ein Warnzeichen genannt. Machen Sie keine Übungen, bis wir mit Ihnen gesprochen haben.',
  'reported-to-us':
    'Ihre Übungen sind unterbrochen. Machen Sie keine davon, bis wir mit Ihnen gesprochen haben.',
  acknowledged:
    'Ihre Übungen sind unterbrochen. {name} weiß, warum, und wird mit Ihnen sprechen. Machen Sie bis dahin keine Übungen.',
  attempted:
    'Wir haben versucht, Sie zu erreichen, und es ist uns nicht gelungen. Rufen Sie uns an: {clinic}, {phone}. Machen Sie keine Übungen, bis wir gesprochen haben.',
  ended: '{name} hat mit Ihnen gesprochen. Ihre Übungen bleiben unterbrochen, bis wir sie wieder freigeben.',
  'ended-carer':
    '{name} hat mit der Person gesprochen, die Sie betreut. Ihre Übungen bleiben unterbrochen, bis wir sie wieder freigeben.',
  'ended-some':
    '{name} hat mit Ihnen gesprochen. Die unten gekennzeichneten Übungen bleiben unterbrochen, bis wir sie wieder freigeben.',
  'ended-carer-some':
    '{name} hat mit der Person gesprochen, die Sie betreut. Die unten gekennzeichneten Übungen bleiben unterbrochen, bis wir sie wieder freigeben.',
  'paused-all': 'Ihre Übungen sind unterbrochen, bis wir sie wieder freigeben.',
  'paused-joint': 'Die Übungen für {joint:your-accusative} sind unterbrochen, bis wir sie wieder freigeben.',
  'paused-some': 'Einige Ihrer Übungen sind unterbrochen, bis wir sie wieder freigeben.',
} as const satisfies Language['sentences']['danger'];
