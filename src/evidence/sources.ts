// The outside texts that rows cite, by key. DOIs are those of docs/references.md, where the full list stands with what was taken and how it is known.

export const SOURCES = {
  // Delivered oxygen.
  Shapiro1991: {
    citation: 'Shapiro BA et al. Clinical Application of Respiratory Care, 4th ed, 1991',
  },
  Wettstein2005: { citation: 'Wettstein RB et al. Respir Care 2005;50:604-609' },
  Bazuaye1992: {
    citation: 'Bazuaye EA et al. Thorax 1992;47:609-611',
    doi: '10.1136/thx.47.8.609',
  },
  ONugent2014: { citation: "O'Reilly Nugent A et al. Respirology 2014;19:538-543" },
  Schachter1980: { citation: 'Schachter EN et al. Crit Care Med 1980;8:405-409' },
  Katz2019: { citation: 'Katz I et al. Respir Res 2019;20:149' },
  Duprez2018: { citation: 'Duprez F et al. Respir Care 2018;63:1528-1534' },
  Zhou2014: { citation: 'Zhou S, Chatburn RL. Respir Care 2014;59:1199-1209' },
  Yorozu2014: { citation: 'Yorozu T et al. J Jpn Soc Intensive Care Med 2014;21:607-613' },
  Boumphrey2003: { citation: 'Boumphrey SM et al. Resuscitation 2003;57:69-72' },
  Coudroy2020: { citation: 'Coudroy R et al. Thorax 2020;75:805-807' },
  Driver2017: { citation: 'Driver BE et al. Ann Emerg Med 2017;69:1-6' },
  FlushOxygen2019: { citation: 'Follow-up of flush-rate oxygen, PMID 29089172' },
  Bunting2025: {
    citation: 'Bunting AJ et al. Am J Emerg Med 2025',
    doi: '10.1016/j.ajem.2025.05.018',
  },
  Goldstein1982: { citation: 'Goldstein RS et al. Lancet 1982;2:1188-1190' },
  Wexler1975: { citation: 'Wexler HR et al. Can Anaesth Soc J 1975;22:417-431' },
  Jeffrey1992: {
    citation: 'Jeffrey AA, Warren PM. Thorax 1992;47:543-546',
    doi: '10.1136/thx.47.7.543',
  },
  OverMask2024: {
    citation: 'Oxygen mask over another mask, 2024',
    doi: '10.1007/978-3-031-67458-7_25',
  },
  Jones1984: { citation: 'Jones HA et al. Lancet 1984;1:1427-1431' },
  Hill1984: { citation: 'Hill SL et al. BMJ 1984;288:1261' },
  ValveMask1984: { citation: 'Eur J Respir Dis 1984;65:68-73' },
  Wagstaff2007: { citation: 'Wagstaff TAJ, Soni N. Anaesthesia 2007;62:492-503' },
  Jensen1991: { citation: 'Jensen AG et al. Acta Anaesthesiol Scand 1991;35:289-292' },
  Kurhekar2017: { citation: 'Kurhekar P et al. Anesth Essays Res 2017;11:463-466' },
  Bethune1967: { citation: 'Bethune DW, Collis JM. Thorax 1967;22:221-225' },
  StopRop2000: { citation: 'STOP-ROP effective oxygen conversion tables' },
  Benaron1994: { citation: 'Benaron DA, Benitz WE. Arch Pediatr Adolesc Med 1994;148:294-300' },
  Finer1996: { citation: 'Finer NN et al. Pediatr Pulmonol 1996;21:48-51' },
  Shann1988: { citation: 'Shann F et al. Lancet 1988;2:1238-1240' },
  Kuluz2001: { citation: 'Kuluz JW et al. Respir Care 2001' },
  Frey2003: {
    citation: 'Frey B, Shann F. Arch Dis Child Fetal Neonatal Ed 2003;88:F84-F88 (review)',
    doi: '10.1136/fn.88.2.F84',
  },
  Bertzouanis2024: {
    citation: 'Bertzouanis A et al. Diagnostics 2024;14:889',
    doi: '10.3390/diagnostics14090889',
  },
  Li2021: { citation: 'Li J et al. Ann Intensive Care 2021;11:164' },
  Huang2024: {
    citation: 'Huang CL et al. J Formos Med Assoc 2024',
    doi: '10.1016/j.jfma.2024.08.006',
  },
  Parke2009: {
    citation: 'Parke R et al. Br J Anaesth 2009;103:886-890',
    doi: '10.1093/bja/aep280',
  },
  Parke2011: {
    citation: 'Parke RL et al. Respir Care 2011;56:1151-1155',
    doi: '10.4187/respcare.01106',
  },
  Parke2013: {
    citation: 'Parke RL, McGuinness SP. Respir Care 2013;58:1621-1624',
    doi: '10.4187/respcare.02358',
  },
  Moeller2015: { citation: 'Moeller W et al. J Appl Physiol 2015;118:1525-1532' },
  Moeller2017: { citation: 'Moeller W et al. J Appl Physiol 2017;122:191-197' },
  TracheostomyFlow2019: {
    citation: 'Sci Rep 2019, s41598-019-51158-0, table 1',
    doi: '10.1038/s41598-019-51158-0',
  },
  ODriscoll2017: {
    citation: "O'Driscoll BR et al. Thorax 2017;72(Suppl 1):ii1-ii90",
    doi: '10.1136/thoraxjnl-2016-209729',
  },
  Beasley2015: {
    citation: 'Beasley R et al. Respirology 2015;20:1182-1191',
    doi: '10.1111/resp.12620',
  },
  Aarc2002: { citation: 'AARC. Respir Care 2002;47:707-716' },
  // Gas, blood and bodies.
  Severinghaus1979: {
    citation: 'Severinghaus JW. J Appl Physiol 1979;46:599-602',
    doi: '10.1152/jappl.1979.46.3.599',
  },
  Ellis1989: {
    citation: 'Ellis RK. J Appl Physiol 1989;67:902',
    doi: '10.1152/jappl.1989.67.2.902',
  },
  Kelman1966: { citation: 'Kelman GR. J Appl Physiol 1966;21:1375-1376' },
  Dash2016: { citation: 'Dash RK et al. Eur J Appl Physiol 2016;116:97-113' },
  Huefner1894: { citation: 'Hüfner G. Arch Anat Physiol 1894' },
  Douglas1988: {
    citation: 'Douglas AR et al. J Appl Physiol 1988;65:473-477',
    doi: '10.1152/jappl.1988.65.1.473',
  },
  Fenn1946: { citation: 'Fenn WO et al. Am J Physiol 1946;146:637-653' },
  Sapsford1995: { citation: 'Sapsford DJ, Jones JG. Eur J Anaesthesiol 1995;12:375-386' },
  ISO2533: { citation: 'ISO 2533 standard atmosphere' },
  West1996: { citation: 'West JB. J Appl Physiol 1996;81:1850-1854' },
  BubbleBench1982: { citation: 'Bench test of four unheated bubble humidifiers, 1982' },
  Chan2009: { citation: 'Bench test of bubble and heated humidifiers, PMID 19294365' },
  ExchangerBench2025: {
    citation: 'Bench test of 71 exchangers, Respir Care',
    doi: '10.1089/respcare.12660',
  },
  IAPWS1997: { citation: 'IAPWS Industrial Formulation 1997', doi: '10.1115/1.483186' },
  Duprez2014: {
    citation: 'Duprez F et al. Health 2014;6:1978-1983 (quotes ISO 15002)',
    doi: '10.4236/health.2014.615232',
  },
  Numa1996: {
    citation: 'Numa AH, Newth CJ. J Appl Physiol 1996;80:1485-1489',
    doi: '10.1152/jappl.1996.80.5.1485',
  },
  Stewart1991: {
    citation: 'Stewart RB, Jacobsen RT, Wagner W. J Phys Chem Ref Data 1991;20:917-1021',
  },
  Htm2006: { citation: 'Health Technical Memorandum 02-01 part A, 2006 (from memory)' },
  Rusconi1994: { citation: 'Rusconi F et al. Pediatrics 1994;94:350-355' },
  WHO2006: { citation: 'WHO child growth standards 2006' },
  ARDSNet2000: {
    citation: 'ARDS Network. N Engl J Med 2000;342:1301-1308',
    doi: '10.1056/NEJM200005043421801',
  },
} as const satisfies Readonly<Record<string, { readonly citation: string; readonly doi?: string }>>

export type SourceKey = keyof typeof SOURCES
