/** German declines every joint and limb, written out by hand. */
import { describe, expect, it } from 'vitest';
import { type Joint, joints, limbs, sides } from '#core/exercises/joints.ts';
import { forms } from '#messages/de/forms.ts';

type Row = readonly [
  plain: string,
  your: string,
  accusative: string,
  dative: string,
  inside: string,
  label: string,
];

const table: Readonly<Record<Joint, Row>> = {
  'left-shoulder': [
    'linke Schulter',
    'Ihre linke Schulter',
    'Ihre linke Schulter',
    'Ihrer linken Schulter',
    'in der linken Schulter',
    'Schulter links',
  ],
  'right-shoulder': [
    'rechte Schulter',
    'Ihre rechte Schulter',
    'Ihre rechte Schulter',
    'Ihrer rechten Schulter',
    'in der rechten Schulter',
    'Schulter rechts',
  ],
  'left-elbow': [
    'linker Ellbogen',
    'Ihr linker Ellbogen',
    'Ihren linken Ellbogen',
    'Ihrem linken Ellbogen',
    'im linken Ellbogen',
    'Ellbogen links',
  ],
  'right-elbow': [
    'rechter Ellbogen',
    'Ihr rechter Ellbogen',
    'Ihren rechten Ellbogen',
    'Ihrem rechten Ellbogen',
    'im rechten Ellbogen',
    'Ellbogen rechts',
  ],
  'left-wrist': [
    'linkes Handgelenk',
    'Ihr linkes Handgelenk',
    'Ihr linkes Handgelenk',
    'Ihrem linken Handgelenk',
    'im linken Handgelenk',
    'Handgelenk links',
  ],
  'right-wrist': [
    'rechtes Handgelenk',
    'Ihr rechtes Handgelenk',
    'Ihr rechtes Handgelenk',
    'Ihrem rechten Handgelenk',
    'im rechten Handgelenk',
    'Handgelenk rechts',
  ],
  'left-hand': [
    'linke Hand',
    'Ihre linke Hand',
    'Ihre linke Hand',
    'Ihrer linken Hand',
    'in der linken Hand',
    'Hand links',
  ],
  'right-hand': [
    'rechte Hand',
    'Ihre rechte Hand',
    'Ihre rechte Hand',
    'Ihrer rechten Hand',
    'in der rechten Hand',
    'Hand rechts',
  ],
  'left-thumb-base': [
    'linkes Daumensattelgelenk',
    'Ihr linkes Daumensattelgelenk',
    'Ihr linkes Daumensattelgelenk',
    'Ihrem linken Daumensattelgelenk',
    'im linken Daumensattelgelenk',
    'Daumensattelgelenk links',
  ],
  'left-finger-joint': [
    'linkes Fingergelenk',
    'Ihr linkes Fingergelenk',
    'Ihr linkes Fingergelenk',
    'Ihrem linken Fingergelenk',
    'im linken Fingergelenk',
    'Fingergelenk links',
  ],
  'right-thumb-base': [
    'rechtes Daumensattelgelenk',
    'Ihr rechtes Daumensattelgelenk',
    'Ihr rechtes Daumensattelgelenk',
    'Ihrem rechten Daumensattelgelenk',
    'im rechten Daumensattelgelenk',
    'Daumensattelgelenk rechts',
  ],
  'right-finger-joint': [
    'rechtes Fingergelenk',
    'Ihr rechtes Fingergelenk',
    'Ihr rechtes Fingergelenk',
    'Ihrem rechten Fingergelenk',
    'im rechten Fingergelenk',
    'Fingergelenk rechts',
  ],
  'left-hip': [
    'linke Hüfte',
    'Ihre linke Hüfte',
    'Ihre linke Hüfte',
    'Ihrer linken Hüfte',
    'in der linken Hüfte',
    'Hüfte links',
  ],
  'right-hip': [
    'rechte Hüfte',
    'Ihre rechte Hüfte',
    'Ihre rechte Hüfte',
    'Ihrer rechten Hüfte',
    'in der rechten Hüfte',
    'Hüfte rechts',
  ],
  'left-knee': [
    'linkes Knie',
    'Ihr linkes Knie',
    'Ihr linkes Knie',
    'Ihrem linken Knie',
    'im linken Knie',
    'Knie links',
  ],
  'right-knee': [
    'rechtes Knie',
    'Ihr rechtes Knie',
    'Ihr rechtes Knie',
    'Ihrem rechten Knie',
    'im rechten Knie',
    'Knie rechts',
  ],
  'left-ankle': [
    'linkes Sprunggelenk',
    'Ihr linkes Sprunggelenk',
    'Ihr linkes Sprunggelenk',
    'Ihrem linken Sprunggelenk',
    'im linken Sprunggelenk',
    'Sprunggelenk links',
  ],
  'right-ankle': [
    'rechtes Sprunggelenk',
    'Ihr rechtes Sprunggelenk',
    'Ihr rechtes Sprunggelenk',
    'Ihrem rechten Sprunggelenk',
    'im rechten Sprunggelenk',
    'Sprunggelenk rechts',
  ],
  'left-foot': [
    'linker Fuß',
    'Ihr linker Fuß',
    'Ihren linken Fuß',
    'Ihrem linken Fuß',
    'im linken Fuß',
    'Fuß links',
  ],
  'right-foot': [
    'rechter Fuß',
    'Ihr rechter Fuß',
    'Ihren rechten Fuß',
    'Ihrem rechten Fuß',
    'im rechten Fuß',
    'Fuß rechts',
  ],
  neck: ['Nacken', 'Ihr Nacken', 'Ihren Nacken', 'Ihrem Nacken', 'im Nacken', 'Nacken'],
  'low-back': [
    'unterer Rücken',
    'Ihr unterer Rücken',
    'Ihren unteren Rücken',
    'Ihrem unteren Rücken',
    'im unteren Rücken',
    'unterer Rücken',
  ],
};

const asked = ['', 'your', 'your-accusative', 'your-dative', 'in', 'label'];

describe('German', () => {
  it.each(joints)('says %s in every case', (joint) => {
    expect(asked.map((form) => forms.joint!(joint, form))).toEqual(table[joint]);
  });

  it('says every arm and leg, plain and with something on it', () => {
    const said = sides.flatMap((side) =>
      limbs.map((limb) =>
        ['', 'your', 'your-accusative', 'on'].map((form) => forms.limb!(`${side}-${limb}`, form)),
      ),
    );
    expect(said).toEqual([
      ['linker Arm', 'Ihr linker Arm', 'Ihren linken Arm', 'am linken Arm'],
      ['linkes Bein', 'Ihr linkes Bein', 'Ihr linkes Bein', 'am linken Bein'],
      ['rechter Arm', 'Ihr rechter Arm', 'Ihren rechten Arm', 'am rechten Arm'],
      ['rechtes Bein', 'Ihr rechtes Bein', 'Ihr rechtes Bein', 'am rechten Bein'],
    ]);
  });

  it('names every month', () => {
    const months = Array.from({ length: 12 }, (_, place) => String(place + 1).padStart(2, '0'));
    expect(months.map((month) => forms.day!(`2026-${month}-07`, ''))).toEqual([
      '7. Januar 2026',
      '7. Februar 2026',
      '7. März 2026',
      '7. April 2026',
      '7. Mai 2026',
      '7. Juni 2026',
      '7. Juli 2026',
      '7. August 2026',
      '7. September 2026',
      '7. Oktober 2026',
      '7. November 2026',
      '7. Dezember 2026',
    ]);
  });
});
