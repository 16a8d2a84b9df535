import { OIL_SOAKED_RAGS } from '../../finish/index.ts';
import type { NoticeRule } from './notice.ts';

/** A finish whose rags can catch fire by themselves. */
export const selfHeatingRags: NoticeRule = ({ materials }) =>
  materials
    .filter(({ material }) => material.selfHeatingRags === true)
    .map(({ material }) => ({
      kind: 'self-heating-rags',
      weight: 'caution',
      about: material.code,
      message: `${material.name}: ${OIL_SOAKED_RAGS.text}`,
      mend: `source: ${OIL_SOAKED_RAGS.source.text}`,
      record: `material:${material.code}`,
    }));
