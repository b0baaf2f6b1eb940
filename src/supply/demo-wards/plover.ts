// Demo ward Plover: high care, 6 beds. Hospital, beds, codes and figures are invented.
import { kpaFromBar } from '../../units/pressure.ts'
import type { WardFile } from '../ward.ts'
import { highFlow, large, OUTLETS, reservoir } from './bed-makers.ts'
import { DEMO_HOSPITAL } from './hospital.ts'

export const PLOVER: WardFile = {
  ...DEMO_HOSPITAL,
  ward: 'Plover',
  supply: {
    area: 'critical-care',
    plant: 'manifold',
    plantsHaveGenerator: true,
    branchLpmMax: 150,
    outletLpmMax: 60,
    manifold: {
      waterVolumeL: 47.2,
      gaugeKpa: kpaFromBar(130),
      count: 16,
      leftGaugeKpa: kpaFromBar(10),
    },
    restOfHospitalLpm: 80,
  },
  beds: [
    {
      bed: '1',
      code: 'P-2001',
      ageYears: 63,
      retentionRisk: 'none',
      setUp: highFlow(60, 0.8),
      mixerDrive: 'pneumatic',
      hasHeatedHumidifier: true,
      cylinders: large(137),
      ...OUTLETS,
    },
    {
      bed: '2',
      code: 'P-2003',
      ageYears: 51,
      retentionRisk: 'none',
      setUp: highFlow(50, 0.6),
      mixerDrive: 'mains',
      batteryMinutes: 0,
      hasHeatedHumidifier: true,
      ...OUTLETS,
    },
    {
      bed: '3',
      code: 'P-2004',
      ageYears: 70,
      retentionRisk: 'known-retainer',
      setUp: highFlow(30, 0.3),
      mixerDrive: 'pneumatic',
      hasHeatedHumidifier: true,
      ...OUTLETS,
    },
    {
      bed: '4',
      code: 'P-2006',
      ageYears: 44,
      retentionRisk: 'none',
      setUp: {
        family: 't-piece-with-limb',
        sourceKind: 'ventilator',
        flowLpm: 20,
        setO2Fraction: 0.4,
      },
      mixerDrive: 'mains',
      batteryMinutes: 120,
      hasHeatedHumidifier: true,
      ...OUTLETS,
    },
    {
      bed: '5',
      code: 'P-2009',
      ageYears: 57,
      retentionRisk: 'none',
      setUp: reservoir(12),
      cylinders: large(100),
      ...OUTLETS,
    },
    {
      bed: '6',
      code: 'P-2010',
      ageYears: 68,
      retentionRisk: 'none',
      setUp: highFlow(40, 0.4),
      hasHeatedHumidifier: true,
      ...OUTLETS,
    },
  ],
}
