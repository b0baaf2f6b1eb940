// Demo ward Wren: children, 10 cots and beds. Hospital, beds, codes and figures are invented.
import { kpaFromBar } from '../../units/pressure.ts'
import type { WardFile } from '../ward.ts'
import { empty, OUTLETS, small, WALL } from './bed-makers.ts'
import { DEMO_HOSPITAL } from './hospital.ts'

export const WREN: WardFile = {
  ...DEMO_HOSPITAL,
  ward: 'Wren',
  supply: {
    area: 'ward',
    plant: 'manifold',
    plantsHaveGenerator: true,
    branchLpmMax: 80,
    manifold: {
      waterVolumeL: 47.2,
      gaugeKpa: kpaFromBar(130),
      count: 16,
      leftGaugeKpa: kpaFromBar(10),
    },
    restOfHospitalLpm: 150,
  },
  beds: [
    {
      bed: '1',
      code: 'W-3001',
      ageYears: 0.1,
      weightKg: 3.4,
      setUp: { family: 'nasal-cannula', size: 'newborn', ...WALL, flowLpm: 0.1 },
      ...OUTLETS,
    },
    {
      bed: '2',
      code: 'W-3002',
      ageYears: 0.05,
      weightKg: 1.9,
      setUp: {
        family: 'head-box',
        size: 'preterm',
        sourceKind: 'blender',
        flowLpm: 8,
        setO2Fraction: 0.3,
      },
      mixerDrive: 'pneumatic',
      ...OUTLETS,
    },
    {
      bed: '3',
      code: 'W-3005',
      ageYears: 0.5,
      weightKg: 7.2,
      setUp: {
        family: 'nasal-high-flow',
        size: 'infant',
        sourceKind: 'blender',
        flowLpm: 10,
        setO2Fraction: 0.4,
      },
      mixerDrive: 'pneumatic',
      hasHeatedHumidifier: true,
      ...OUTLETS,
    },
    {
      bed: '4',
      code: 'W-3007',
      ageYears: 4,
      weightKg: 16,
      setUp: { family: 'simple-mask', size: 'child', ...WALL, flowLpm: 6 },
      beside: { jetLpm: 6 },
      cylinders: small(137, false),
      ...OUTLETS,
    },
    {
      bed: '5',
      code: 'W-3008',
      ageYears: 9,
      weightKg: 29,
      setUp: { family: 'nasal-cannula', size: 'child', ...WALL, flowLpm: 2 },
      ...OUTLETS,
    },
    { bed: '6', code: 'W-3010', ageYears: 2, weightKg: 12, setUp: null, ...OUTLETS },
    empty('7'),
    {
      bed: '8',
      code: 'W-3013',
      ageYears: 1,
      weightKg: 10,
      setUp: { family: 'nasal-cannula', size: 'infant', ...WALL, flowLpm: 1 },
      ...OUTLETS,
    },
    {
      bed: '9',
      code: 'W-3014',
      ageYears: 12,
      weightKg: 41,
      setUp: { family: 'non-rebreather-mask', size: 'child', ...WALL, flowLpm: 10 },
      ...OUTLETS,
    },
    empty('10'),
  ],
}
