import { createHash } from 'node:crypto';
import { type PaperPicture, type PaperSender, type PaperStyle, paperWriters } from '@scantling/quoting';
import type { PaperPictures } from '../prepare-paper.ts';
import { sampleLogo, samplePhotograph } from './sample-picture.ts';

// Names, places, numbers and prices are invented.
const hashOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');
const logo = sampleLogo();
const photograph = samplePhotograph();

export const SAMPLE_PICTURES: PaperPictures = new Map([
  [hashOf(logo), logo],
  [hashOf(photograph), photograph],
]);

export const SAMPLE_PHOTOGRAPH: PaperPicture = {
  sha256: hashOf(photograph),
  alternative: 'A board of white oak with even grain',
  caption: 'White oak, oiled, as it will look on the day it is delivered',
};

export const SAMPLE_SENDER: PaperSender = {
  name: 'Hollin & Fell Furniture',
  addressLines: ['14 Sawpit Lane', 'Northcombe, ZZ 01234'],
  email: 'bench@hollinfell.example',
  phone: '+1 555 0142',
  web: 'https://hollinfell.example',
  taxNumber: '12-3456789',
  registration: 'Register of trades, Northcombe, 4711',
  bankLines: ['Example Bank, Northcombe', 'Account 0000 1234', 'Routing 000000000'],
  footer: '',
  logo: { sha256: hashOf(logo), alternative: 'Mark of Hollin & Fell: three dovetails' },
};

export const SAMPLE_CLIENT = {
  name: 'Meridian Row Library Trust',
  addressLines: ['Ms Odile Hartwright', '7 Meridian Row', 'Eastcombe, ZZ 04321'],
};

export const AMERICAN: PaperStyle = { locale: 'en-US', currency: 'USD', lengths: 'imperial' };
export const IRISH: PaperStyle = { locale: 'en-IE', currency: 'EUR', lengths: 'metric' };
export const american = paperWriters(AMERICAN);
export const irish = paperWriters(IRISH);
