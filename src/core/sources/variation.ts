/**
 * Sources of the variation ladders: body segments, measured shares, chair heights, elastic bands.
 * A title in square brackets describes the study; its printed title was not copied.
 */
import type { Source } from './source.ts';

export const variationSources = {
  'de-leva-1996': {
    authors: 'de Leva P',
    year: 1996,
    title: "Adjustments to Zatsiorsky-Seluyanov's segment inertia parameters",
    container: 'Journal of Biomechanics 29:1223–1230',
    kind: 'dataset',
  },
  'winter-2009': {
    authors: 'Winter DA, after Dempster',
    year: 2009,
    title: '[Biomechanics and motor control of human movement, 4th edition: anthropometric table]',
    kind: 'handbook',
  },
  'pavol-2002': {
    authors: 'Pavol MJ and others',
    year: 2002,
    title: '[Body segment inertial parameters for the elderly]',
    kind: 'dataset',
  },
  'drillis-contini-1966': {
    authors: 'Drillis R, Contini R',
    year: 1966,
    title: '[Body segment parameters: lengths as a fraction of stature]',
    container: 'reprinted in Winter 2009, figure 4.1',
    kind: 'handbook',
  },
  'magni-2017': {
    authors: 'Magni and others',
    year: 2017,
    title: '[Resistance training for symptomatic hand osteoarthritis: systematic review and meta-analysis]',
    container: 'Arthritis Research and Therapy 19',
    identifier: '10.1186/s13075-017-1348-3',
    kind: 'review',
  },
  'hennig-2015': {
    authors: 'Hennig and others',
    year: 2015,
    title: '[Hand exercises in women with hand osteoarthritis: a randomised trial]',
    container: 'Annals of the Rheumatic Diseases 74',
    identifier: '10.1136/annrheumdis-2013-204808',
    kind: 'trial',
  },
  'ebben-2011': {
    authors: 'Ebben WP and others',
    year: 2011,
    title: 'Kinetic analysis of several variations of push-ups',
    container: 'Journal of Strength and Conditioning Research 25:2891–2894',
    identifier: '10.1519/JSC.0b013e31820c8587',
    kind: 'study',
  },
  'suprak-2011': {
    authors: 'Suprak DN, Dawes J, Stephenson MD',
    year: 2011,
    title: '[The effect of position on the percentage of body mass supported during push-up variants]',
    container: 'Journal of Strength and Conditioning Research 25:497–503',
    kind: 'study',
  },
  'mier-2014': {
    authors: 'Mier CM and others',
    year: 2014,
    title: '[Load supported in the push-up and the knee push-up, men and women]',
    container: 'International Journal of Exercise Science 7(2):161–168',
    kind: 'study',
  },
  'gouvali-2005': {
    authors: 'Gouvali MK, Boudolos K',
    year: 2005,
    title: 'Dynamic and electromyographical analysis in variants of push-up exercise',
    container: 'Journal of Strength and Conditioning Research 19:146–151',
    identifier: '10.1519/14733.1',
    kind: 'study',
  },
  'melrose-dawes-2015': {
    authors: 'Melrose D, Dawes J',
    year: 2015,
    title: '[Resistance of a suspended lean-back row at four body angles]',
    container: 'Journal of Athletic Enhancement',
    kind: 'study',
  },
  'yoshioka-2014': {
    authors: 'Yoshioka S and others',
    year: 2014,
    title: '[Peak hip and knee joint moments during a sit-to-stand movement at several seat heights]',
    container: 'BioMedical Engineering OnLine 13:27',
    identifier: '10.1186/1475-925X-13-27',
    kind: 'study',
  },
  'janssen-2002': {
    authors: 'Janssen WG, Bussmann HB, Stam HJ',
    year: 2002,
    title: '[Determinants of the sit-to-stand movement: a review]',
    container: 'Physical Therapy',
    kind: 'review',
  },
  'sarabon-2021': {
    authors: 'Šarabon N and others',
    year: 2021,
    title: '[Normative data for isometric knee-extension strength: systematic review and meta-analysis]',
    container: 'Frontiers in Physiology 12:767941',
    identifier: '10.3389/fphys.2021.767941',
    kind: 'review',
  },
  'uchida-2016': {
    authors: 'Uchida MC and others',
    year: 2016,
    title: '[Tension of elastic bands during elongation, bench test]',
    container: 'Journal of Physical Therapy Science 28:1266–1271',
    identifier: '10.1589/jpts.28.1266',
    kind: 'study',
  },
  'simoneau-2001': {
    authors: 'Simoneau GG and others',
    year: 2001,
    title: '[Biomechanics of elastic resistance]',
    container: 'Journal of Orthopaedic & Sports Physical Therapy 31:16–24',
    identifier: '10.2519/jospt.2001.31.1.16',
    kind: 'study',
  },
  'gulmez-2017': {
    authors: 'Gulmez I',
    year: 2017,
    title: '[Load on the straps in suspended push-ups at several angles]',
    container: 'Journal of Strength and Conditioning Research 31:1017–1023',
    kind: 'study',
  },
  'emerson-2014': {
    authors: 'Emerson and others',
    year: 2014,
    title: '[Peak force of pull-ups with and without foot assistance]',
    container: 'conference abstract',
    kind: 'study',
  },
} as const satisfies Record<string, Source>;

export type VariationSource = keyof typeof variationSources;
