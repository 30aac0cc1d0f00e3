import type { BibliographyLine } from './source.js';

/**
 * Every source that a formula, a constant or a rule cites, by key. One line a place that is cited, not one a book:
 * the locator is part of the line. Keep the groups; add a line where the subject is. Keys never change once published.
 */
export const BIBLIOGRAPHY = {
  // Own work
  'derived-here': {
    title: 'Worked out from first principles',
    locator: 'docstring of the calculation, docs/derivations',
    standing: 'derived',
  },
  'shop-practice': {
    title: 'Common practice of the trade, no published source',
    locator: 'none',
    standing: 'shop practice',
  },

  // Units
  'si-units': {
    title: 'Guide for the Use of the International System of Units, Special Publication 811',
    author: 'National Institute of Standards and Technology, 2008',
    locator: 'Appendix B: conversion factors, exact values in bold',
    standing: 'recalled',
  },
  'inch-volume': {
    title: 'Compression ratio worked by hand: 12.8704 cc per cubic inch of bore squared times stroke',
    locator: 'constant of the displacement formula',
    standing: 'read',
    address: 'http://jniolon.classicpickup.com/compressionratio.html',
  },

  // Slider-crank and displacement
  'heywood-crank': {
    title: 'Internal Combustion Engine Fundamentals',
    author: 'J. B. Heywood, 1988',
    locator: 'section 2.2: geometrical properties of reciprocating engines',
    standing: 'recalled',
  },
  'pulkrabek-crank': {
    title: 'Engineering Fundamentals of the Internal Combustion Engine',
    author: 'W. W. Pulkrabek',
    locator: 'chapter 2, example 2-1',
    standing: 'recalled',
  },
  'khurmi-crank': {
    title: 'Theory of Machines, worked examples re-keyed as a public exercise companion',
    author: 'R. S. Khurmi and J. K. Gupta',
    locator: 'chapter 15, example 15.3: inertia forces in reciprocating parts',
    standing: 'read',
    address: 'https://github.com/FOSSEE/Scilab-TBC-Uploads',
    seen: 'inputs and method in the companion, 213/CH15/EX15.3; the answers printed in the book are recalled',
  },
  'peak-piston-speed': {
    title: 'How fast a piston travels, discussion with a worked 3.307 in stroke, 6.024 in rod',
    locator: 'worked numbers for 6000 rpm',
    standing: 'read',
    address: 'http://www.quartermile.ws/forum/index.php?topic=7907.msg80124',
  },

  // Cam and valve motion
  'cam-terms': {
    title: 'SAE J604, engine terminology and nomenclature',
    author: 'SAE International',
    locator: 'valve timing terms',
    standing: 'recalled',
  },
  'norton-cam': {
    title: 'Cam Design and Manufacturing Handbook',
    author: 'R. L. Norton',
    locator: 'tables of peak velocity and acceleration of the standard curves',
    standing: 'recalled',
  },
  'rothbart-cam': {
    title: 'Cams: Design, Dynamics, and Accuracy',
    author: 'H. A. Rothbart, 1956',
    locator: 'tables of characteristics of the standard curves',
    standing: 'recalled',
  },
  'polydyne-cam': {
    title: 'Polydyne cam design, in Machine Design, 1953',
    author: 'D. A. Stoddart',
    locator: 'polynomial from boundary conditions',
    standing: 'recalled',
  },
  'degree-wheel': {
    title: 'How to use a degree wheel, re-posted text with worked readings',
    locator: 'equal-lift method',
    standing: 'read',
    address: 'https://blog.decatech.com/how-to-wos/degree-wheel-murah-5f8779',
  },

  'least-squares-book': {
    title: 'Numerical Methods for Least Squares Problems',
    author: 'Å. Björck, 1996',
    locator: 'section 2.4: Gram-Schmidt; section 9.2: Gauss-Newton',
    standing: 'recalled',
  },
  'spline-book': {
    title: 'A Practical Guide to Splines',
    author: 'C. de Boor, 1978',
    locator: 'chapter IV: piecewise cubic interpolation',
    standing: 'recalled',
  },

  // Lifter preload and valve gear
  'stud-nut-preload': {
    title:
      'Plunger travel from turns of a stud nut: the pivot falls by turns times pitch, the cup by (1 + 1/ratio) times that',
    locator: 'docstring of the calculation',
    standing: 'derived',
  },
  'stud-nut-turns': {
    title: 'Light-truck service data, valve clearance adjustments, 1993',
    locator: 'rocker nut: turns past zero lash by engine',
    standing: 'read',
    address:
      'https://charm.mcallihan.com/Chevy%20Truck/1993/G%2030%20Van%20V8-454%207.4L/Repair%20and%20Diagnosis/Engine%2C%20Cooling%20and%20Exhaust/Engine/Tune-up%20and%20Engine%20Performance%20Checks/Valve%20Clearance/Adjustments',
  },
  'preload-window': {
    title: 'Hydraulic lifter preload of 0.020 to 0.060 in, parts trade guide',
    locator: 'preload paragraph',
    standing: 'read',
    address: 'https://www.motorstate.com/PumpItUp.htm',
  },
  'valve-stop-lists': {
    title: 'Service data with lists of the valves to set at each crank stop',
    locator: 'valve clearance adjustments; further lists with their addresses in cases/valve-sets.json',
    standing: 'read',
    address:
      'https://charm.mcallihan.com/Chevy%20Truck/1993/G%2030%20Van%20V8-454%207.4L/Repair%20and%20Diagnosis/Engine%2C%20Cooling%20and%20Exhaust/Engine/Tune-up%20and%20Engine%20Performance%20Checks/Valve%20Clearance/Adjustments',
  },
  // Selection
  'assignment-duality': {
    title:
      'The Hungarian method for the assignment problem, and prices of linear programming that prove an assignment best',
    author: 'H. W. Kuhn, 1955; J. Munkres, 1957',
    locator: 'Naval Research Logistics Quarterly 2, 83 to 97',
    standing: 'recalled',
  },
  'hall-set': {
    title: 'On representatives of subsets',
    author: 'P. Hall, 1935',
    locator: 'the condition for a complete matching',
    standing: 'recalled',
  },
  'hopcroft-karp': {
    title: 'An n^5/2 algorithm for maximum matchings in bipartite graphs',
    author: 'J. E. Hopcroft and R. M. Karp, 1973',
    locator: 'whole paper',
    standing: 'recalled',
  },
  'balanced-assignment': {
    title: 'Balanced optimization problems',
    author: 'S. Martello, W. R. Pulleyblank, P. Toth and D. de Werra, 1984',
    locator: 'least difference between the largest and the smallest cost of an assignment',
    standing: 'recalled',
  },
  'branch-and-bound': {
    title: 'An automatic method of solving discrete programming problems',
    author: 'A. H. Land and A. G. Doig, 1960',
    locator: 'partial plans are left when their bound cannot reach the best plan',
    standing: 'recalled',
  },
  bellman: {
    title: 'Dynamic Programming',
    author: 'R. Bellman, 1957',
    locator: 'principle of optimality',
    standing: 'recalled',
  },
  'shim-rule': {
    title:
      'Service manual of a small diesel with overhead cam: shim chosen from the clearance read, with a worked example',
    locator: 'valve clearance, p. 76; further rules with their addresses in cases/shims.json',
    standing: 'read',
    address: 'https://www.easymanua.ls/toro/groundsmaster-455-d/manual/767664?p=76',
  },
  'collapsed-gap': {
    title: 'Passenger-car service data, valve clearance adjustments, 1990',
    locator: 'allowed gap with the lifter collapsed; service pushrod lengths',
    standing: 'read',
    address:
      'https://manuals.autorepairshq.com/Mercury/1990/Grand%20Marquis%20V8-351%205.8L/Repair%20and%20Diagnosis/Powertrain%20Management/Tune-up%20and%20Engine%20Performance%20Checks/Valve%20Clearance/Adjustments',
  },
  'johnson-column': {
    title: 'Johnson’s parabolic formula, and Euler columns with end constants',
    locator: 'formulas of both branches and their meeting point',
    standing: 'read',
    address: 'https://probsee.com/p/Johnson%27s_parabolic_formula',
    seen: 'also http://www.civilengcalculations.com/jmm/beam56.html',
  },
  'shigley-spring': {
    title: 'Mechanical Engineering Design',
    author: 'J. E. Shigley',
    locator: 'chapter 10: mechanical springs, example 10-1 and the critical frequency of helical springs',
    standing: 'recalled',
  },
  'nested-springs': {
    title: 'Design of Machine Elements, worked examples re-keyed as a public exercise companion',
    author: 'V. B. Bhandari',
    locator: 'chapter 10, example 10.18: two concentric springs',
    standing: 'read',
    address: 'https://github.com/FOSSEE/Scilab-TBC-Uploads',
    seen: 'inputs and method in the companion, 764/CH10; the answers are computed',
  },
  'spring-pressure': {
    title: 'Getting the right amount of valve spring pressure, trade magazine, 2017',
    locator: 'seat load plus rate times lift, worked example',
    standing: 'read',
    address: 'http://www.enginebuildermag.com/2017/07/pressure-importance-getting-right-amount-spring-pressure/',
  },
  'heywood-valves': {
    title: 'Internal Combustion Engine Fundamentals',
    author: 'J. B. Heywood, 1988',
    locator: 'section 6.3: valve and port geometry, area by lift',
    standing: 'recalled',
  },
  'piston-to-valve': {
    title: 'Piston to valve clearance, magazine text',
    locator: 'least gaps of 0.080 in intake and 0.100 in exhaust',
    standing: 'read',
    address: 'http://www.fordmuscle.com/fundamentals/pistontovalve/index.shtml',
  },

  // Threads and fasteners
  'iso-68-1': {
    title: 'ISO 68-1, general purpose screw threads, basic profile, metric',
    author: 'International Organization for Standardization',
    locator: 'basic profile',
    standing: 'read',
    address: 'https://obliczenia.icad.pl/gwinty/metryczne/gwMResultsExample.asp',
    seen: 'a printed M10 example with the values of the national equivalent, not the standard',
  },
  'iso-261': {
    title: 'ISO 261, general purpose metric screw threads, general plan',
    author: 'International Organization for Standardization',
    locator: 'diameter and pitch combinations',
    standing: 'recalled',
  },
  'iso-724': {
    title: 'ISO 724, general purpose metric screw threads, basic dimensions',
    author: 'International Organization for Standardization',
    locator: 'pitch and minor diameters',
    standing: 'read',
    address: 'http://www.ux.uis.no/~hirpa/6KdB/ME/StressArea.htm',
    seen: 'formulas and values on a university page, not the standard',
  },
  'asme-b1-1': {
    title: 'ASME B1.1, unified inch screw threads',
    author: 'American Society of Mechanical Engineers',
    locator: 'UNC and UNF basic dimensions, tensile stress areas',
    standing: 'read',
    address: 'https://ns1.engineersedge.com/hardware/ansi_inch_size_thread_stress_15800.htm',
    seen: 'copied tables, not the standard',
  },
  'iso-898-1': {
    title: 'ISO 898-1, mechanical properties of fasteners, bolts, screws and studs',
    author: 'International Organization for Standardization',
    locator: 'table of mechanical and physical properties',
    standing: 'read',
    address:
      'http://usefastener.com/knowledge/403-mechanical-and-physical-properties-of-bolts-screws-and-studs-en-iso-898-1.html',
    seen: 'a copied table, not the standard',
  },
  'iso-898-1-loads': {
    title: 'ISO 898-1, minimum ultimate tensile loads and proof loads',
    author: 'International Organization for Standardization',
    locator: 'load tables, coarse and fine pitch',
    standing: 'read',
    address:
      'http://usefastener.com/knowledge/404-minimum-ultimate-tensile-loads-for-metric-coarse-pitch-thread-en-iso-898-1.html',
    seen: 'copied tables, not the standard',
  },
  'sae-j429': {
    title: 'SAE J429, mechanical and material requirements for externally threaded fasteners',
    author: 'SAE International',
    locator: 'grades 2, 5 and 8: proof, yield and tensile strength',
    standing: 'read',
    address:
      'https://www.china-bolts.com/sae-j429-mechanical-and-physical-property-for-the-different-property-classes-of-bolts-screws-and-studs',
    seen: 'a summary table, not the standard',
  },
  'nut-factor': {
    title: 'What the nut factor stands for, with a chart of torque for grade 5 screws',
    locator: 'chart point 3/8-16 at 75 % of proof',
    standing: 'read',
    address: 'https://mobiletechengineering.com/2020/11/15/what-does-the-nut-factor-k-really-encompass/',
  },
  'nut-factor-ranges': {
    title: 'Engineering data of a fastener supplier: ranges of the nut factor by surface',
    locator: 'table of nut factors',
    standing: 'read',
    address: 'https://www.zipfastener.com/engineering-data/',
  },
  'root-areas': {
    title: 'Bolt root and tensile stress areas, metric',
    locator: 'table of root and stress areas',
    standing: 'read',
    address: 'https://www.engineersedge.com/hardware/bolt_root_and_tensile_stress_area_15776.htm',
  },
  'vdi-2230': {
    title: 'VDI 2230 part 1, systematic calculation of highly stressed bolted joints',
    author: 'Verein Deutscher Ingenieure',
    locator: 'tightening torque, assembly preload, resilience, embedding',
    standing: 'recalled',
  },
  'vdi-2230-table': {
    title: 'VDI 2230, 2001 edition: assembly preload and torque, fine thread',
    author: 'Verein Deutscher Ingenieure',
    locator: 'table reprinted in a fastener catalogue, p. 685',
    standing: 'read',
    address: 'https://www.mastik.pt/wa_files/files/basic-html/page685.html',
    seen: 'the reprinted table, not the guideline',
  },
  'vdi-2230-scatter': {
    title: 'VDI 2230, 1986 edition: tightening factors by method',
    author: 'Verein Deutscher Ingenieure',
    locator: 'table of tightening factors',
    standing: 'read',
    address: 'http://www2.trfastenings.com/pages/Tightening+Factors+and+Tolerances',
    seen: 'the reprinted table, not the guideline',
  },
  'iso-6789': {
    title: 'ISO 6789, hand torque tools',
    author: 'International Organization for Standardization',
    locator: 'permissible deviation of ±4 % for most click wrenches',
    standing: 'recalled',
  },
  'torque-wrench-adapter': {
    title: 'TM 9-254, torque wrench with angled extension',
    author: 'US Department of the Army',
    locator: 'effective length with an adapter set at an angle',
    standing: 'read',
    address: 'http://firetrucksandequipment.tpub.com/TM-9-254/css/TM-9-254_92.htm',
  },
  'adapter-sums': {
    title: 'Torque wrench manual and a page on extensions: two worked in-line adapters',
    locator: 'manual p. 7; extensions page',
    standing: 'read',
    address: 'https://www.easymanua.ls/performance-tool/m199/manual?p=7',
    seen: 'also http://torqwrench.com/Info/extens.php',
  },
  'shigley-joint': {
    title: 'Mechanical Engineering Design',
    author: 'J. E. Shigley',
    locator: 'chapter 8: stiffness of clamped members, pressure cones and fitted exponential',
    standing: 'recalled',
  },
  'thread-engagement': {
    title: 'Generator-set manual: torque table, note on thread engagement',
    locator: 'p. 51, note 3',
    standing: 'read',
    address: 'https://www.easymanua.ls/kohler/kg80r/manual?p=51',
  },
  'stage-shares': {
    title: 'Flange bolt torque sequence: passes at 30, 60 and 100 %',
    locator: 'torque passes',
    standing: 'read',
    address: 'https://www.hswhite.com/flange-bolt-torque-sequence/',
  },
  'retorque-dwell': {
    title: 'Conference paper on re-tightening of gasketed flanges, PVP 2021, V002T02A004',
    author: 'American Society of Mechanical Engineers, 2021',
    locator: 'dwell of at least 4 hours at ambient temperature',
    standing: 'read',
    address:
      'https://mechanismsrobotics.asmedigitalcollection.asme.org/PVP/proceedings-abstract/PVP2021/85321/V002T02A004/1122010',
    seen: 'the abstract',
  },
  'asme-pcc-1': {
    title: 'ASME PCC-1, guidelines for pressure boundary bolted flange joint assembly',
    author: 'American Society of Mechanical Engineers',
    locator: 'legacy cross pattern and rounds',
    standing: 'recalled',
  },
  'bolt-rounds': {
    title: 'TB 9-2320-279-13&P-2, torque limits work package',
    author: 'US Department of the Army',
    locator: 'rounds at part torque; straight-row principle',
    standing: 'read',
    address: 'https://constructionpaletizedsystems.tpub.com/TB-9-2320-279-13-P-2/TB-9-2320-279-13-P-20163.htm',
  },

  // Cylinders, pistons and rings
  'cylinder-ratio-parts': {
    title: 'Calculating compression, magazine article with a worked engine',
    locator: 'gasket volume page: swept, deck and gasket volume, ratio',
    standing: 'read',
    address: 'http://www.circletrack.com/enginetech/ctrp_1102_calculating_compression/gasket_volume_measurements.html',
  },
  downfill: {
    title: 'Compression ratio from a measured volume with the piston lowered',
    locator: 'worked numbers: 4.070 in bore, piston 0.500 in down',
    standing: 'read',
    address: 'http://home.comcast.net/~mopauly/compression.htm',
  },
  'cranking-pressure': {
    title: 'Compression ratio, encyclopedia text',
    locator: 'pressure of a trapped charge from ratio and exponent',
    standing: 'read',
    address: 'https://www.altsci.com/3/p/Compression%20ratio/37',
    seen: 'a copy of the article',
  },
  'standard-atmosphere': {
    title: 'ISO 2533, standard atmosphere',
    author: 'International Organization for Standardization',
    locator: 'pressure up to 11 km',
    standing: 'recalled',
  },
  'water-density': {
    title: 'Recommended table for the density of water between 0 and 40 °C, Metrologia 38, 2001',
    author: 'M. Tanaka and others',
    locator: 'formula for air-free water',
    standing: 'recalled',
  },
  'iso-4787': {
    title: 'ISO 4787, laboratory glassware, volumetric instruments, testing of capacity',
    author: 'International Organization for Standardization',
    locator: 'volume from weighed water with buoyancy of air',
    standing: 'recalled',
  },
  'milling-perimeter': {
    title: 'Cylinder head milling for a 1 cc reduction',
    locator: 'circle of the same perimeter',
    standing: 'read',
    address: 'http://www.eatonbalancing.com/blog/2013/01/30/cylinder-head-milling-for-a-1cc-reduction/',
  },
  'angle-milling': {
    title: 'Angle milling cylinder heads, magazine article',
    locator: 'cut = 0.0175 times width times degrees',
    standing: 'read',
    address: 'http://www.circletrack.com/enginetech/ctrp_0312_angle_milling_cylinder_heads/',
  },
  'intake-face-table': {
    title: 'Intake face cuts after milling a head, table of manifold makers, widely reprinted',
    locator: '0.010 in off the head: 0.0123 in off the intake side, 0.0172 in off the end rails',
    standing: 'recalled',
  },
  'bore-grid': {
    title: 'Engine manual of a 4.0 V6, cylinder block inspection',
    locator: 'p. EM-116: out of round from X and Y, taper from A and C',
    standing: 'read',
    address: 'https://www.easymanua.ls/nissan/engine/manual?p=116',
  },
  'bore-cylindricity': {
    title: 'Service manual of a small diesel, cylinder bore measurement',
    locator: '5.1.5: roundness and cylindricity in three heights and two directions',
    standing: 'read',
    address: 'https://manualarchiveguide.com/manuals/Yanmar-3JH4E-Service-Manual-4779201?page=198',
  },
  'bore-taper-spread': {
    title: 'Service data of a 3.5 V6, piston to bore clearance',
    locator: 'taper as the spread of the three heights, 0.015 mm',
    standing: 'read',
    address: 'https://myvehicle.help',
  },
  'bore-taper-pairs': {
    title: 'Motorcycle service manual, 2003',
    locator: 'p. 216: taper and out of round across heights and directions',
    standing: 'read',
    address: 'https://manualslib.fr/751211?page=216',
  },
  'smallest-oversize': {
    title: 'Service manual of a small engine, reboring',
    locator: 'p. 42: the smallest standard oversize at which the bore cleans up',
    standing: 'read',
    address: 'https://manualshelf.com/manual/toro/y1-16oe04/4-3-2-1-service-manual-english/page-42.html',
  },
  'bored-size': {
    title: 'Service data of a 1.8 four, piston specifications',
    locator: 'D = A + B - C, finished piston, clearance, honing allowance',
    standing: 'read',
    address: 'https://manuals.autorepairshq.com',
  },
  'oversize-table': {
    title: 'Service data of a 1.8 four, 2002, cylinder block',
    locator: 'bore sizes standard, +0.25, +0.50 in mm and inches',
    standing: 'read',
    address: 'https://manuals.autorepairshq.com',
  },
  'piston-selection': {
    title: 'Service data of a 5.7 V8, 2000, piston selection',
    locator: 'where bore and piston are measured; clearance 0.018 to 0.054 mm',
    standing: 'read',
    address: 'https://myvehicle.help',
  },
  'ring-gap-worked': {
    title: 'Ring gaps by factor, trade magazine, January 2019',
    locator: 'p. 58: 4.030 in bore, 0.0045 and 0.0050',
    standing: 'read',
    address: 'https://nbm.uberflip.com/i/1057448-january-19/63',
  },
  'ring-gap-table-five': {
    title: 'Ring gap table of a piston maker with five applications',
    locator: 'top and second ring, in per in of bore',
    standing: 'read',
    address: 'https://www.ramforum.com',
    seen: 'the table as quoted in a discussion, post 2402670',
  },
  'ring-gap-table-four': {
    title: 'Ring gap table of a piston maker with four applications',
    locator: 'top ring; second ring 1.25 times the top; rail at least 0.015 in',
    standing: 'read',
    address: 'https://supertech.svmdev1.com/piston-and-ring-gap',
  },
  'ring-gap-pi': {
    title: 'Ring gap and bore size, discussion',
    locator: 'gap follows 3.14 times the change of bore',
    standing: 'read',
    address: 'https://forums.pelicanparts.com',
    seen: 'thread 1013681',
  },
  'ring-expansion': {
    title: 'Gap of piston and sealing rings, draughting notes of a ring maker',
    locator: '1.07 mm a developed metre and 100 °C between 20 and 200 °C, 1.30 between 200 and 500 °C',
    standing: 'read',
    address: 'https://www.cronite-group.com/draftringssab/cut-gap/',
  },
  'ring-side-clearance': {
    title: 'Service data of a 3.0 V6, 2002, piston and ring specifications',
    locator: 'groove width and side clearance',
    standing: 'read',
    address: 'https://charm.mcallihan.com',
  },
  'mean-gas-speed': {
    title: 'The Internal-Combustion Engine in Theory and Practice',
    author: 'C. F. Taylor',
    locator: 'inlet flow: mean gas velocity from piston speed and area ratio',
    standing: 'recalled',
  },

  // Balance
  'bobweight-parts': {
    title: 'Balancing a rotating assembly, magazine article with the weights of one engine',
    locator: 'weights of piston, pin, locks, rings, rod ends, bearings, oil',
    standing: 'read',
    address: 'http://www.chevyhiperformance.com/tech/engines_drivetrain/shortblock/0906chp_balanced_rotating_accembly/',
  },
  'khurmi-balance': {
    title: 'Theory of Machines',
    author: 'R. S. Khurmi and J. K. Gupta',
    locator: 'chapters 21 and 22: balancing of rotating and reciprocating masses',
    standing: 'recalled',
  },
  'iso-21940-11': {
    title: 'ISO 21940-11, mechanical vibration, rotor balancing, tolerances for rotors with rigid behaviour',
    author: 'International Organization for Standardization',
    locator: 'balance quality grade G',
    standing: 'recalled',
  },

  // Measuring
  'gum-type-a': {
    title: 'JCGM 100, guide to the expression of uncertainty in measurement (GUM)',
    author: 'Joint Committee for Guides in Metrology, 2008',
    locator: '4.2 and 4.3: evaluation from repeats and from limits; 5.1.2: combination',
    standing: 'recalled',
  },
  'gum-digits': {
    title: 'JCGM 100, guide to the expression of uncertainty in measurement (GUM)',
    author: 'Joint Committee for Guides in Metrology, 2008',
    locator: '7.2.6: an uncertainty is quoted with at most two significant digits, and the value to the same place',
    standing: 'recalled',
  },
  'gum-h1': {
    title: 'JCGM 100 (GUM), example H.1: end gauge against a standard',
    author: 'Joint Committee for Guides in Metrology, 2008',
    locator: 'H.1',
    standing: 'read',
    address: 'https://github.com/cran/metRology',
    seen: 'inputs, degrees of freedom and model in data file GUM.H.1.rda; the printed results are recalled',
  },
  'jcgm-106': {
    title: 'JCGM 106, the role of measurement uncertainty in conformity assessment',
    author: 'Joint Committee for Guides in Metrology, 2012',
    locator: '7.4: conformance probability',
    standing: 'read',
    address: 'https://metrologyrules.com/2022/03',
    seen: 'inputs of the example on a page about it; the document itself is recalled',
  },
  'general-wear': {
    title: 'TM 10-3930-647-14&P, wear limits where no other is printed',
    author: 'United States Army',
    locator: 'page P0175',
    standing: 'read',
    address: 'https://constructionforklifts.tpub.com',
    seen: 'excerpt, as quoted in the trade map, operation O07',
  },
  'iso-1': {
    title: 'ISO 1, standard reference temperature for geometrical product specification',
    author: 'International Organization for Standardization',
    locator: '20 °C',
    standing: 'recalled',
  },
  'reference-temperature': {
    title: 'Length and dimensional measurements at NIST, J. Res. NIST 99(1), 1994',
    author: 'D. A. Swyt',
    locator: 'reference temperature 20 °C and thermal expansion of aluminium, steel and silicon',
    standing: 'read',
    address: 'https://pmc.ncbi.nlm.nih.gov/articles/PMC8345254/',
  },

  // Fits
  'iso-286-1': {
    title: 'ISO 286-1, geometrical product specifications, ISO code system for tolerances on linear sizes, part 1',
    author: 'International Organization for Standardization',
    locator: 'standard tolerances, fundamental deviations, rules of the Δ values',
    standing: 'recalled',
  },
  'iso-286-2': {
    title: 'ISO 286-2, tables of limit deviations for holes and shafts',
    author: 'International Organization for Standardization',
    locator: 'excerpt under its national number',
    standing: 'read',
    address: 'https://docs.steelcam.org/sumitomo/tehnicheskaya-informaciya-page28',
    seen: 'an excerpt of the national equivalent, not the standard',
  },
  'thick-cylinders': {
    title: 'Lamé’s thick cylinders: shrink fit with a worked sum, and the general form',
    locator: 'd 100, hub 150 mm, interference 0.10 mm; cylinders page',
    standing: 'read',
    address: 'https://novasolver.jp/en/tools/shrink-fit-stress.html',
    seen: 'also http://www.roymech.co.uk/Useful_Tables/Mechanics/Cylinders.html',
  },
  'din-7190': {
    title: 'DIN 7190, interference fits, calculation and design rules',
    author: 'Deutsches Institut für Normung',
    locator: 'smoothing of the surfaces',
    standing: 'recalled',
  },
  'material-tables': {
    title: 'Materials textbook, appendix B, table B.6, and comparison pages of a materials database',
    locator: 'each row of calc/fits/materials.ts names its own',
    standing: 'read',
    address: 'https://issuhub.com/view/index/5550?pageIndex=844',
    seen: 'the expansion table; moduli on database pages; some figures are recalled, as the rows say',
  },

  // Plain bearings
  'grade-chart': {
    title: 'Workshop manual RM451U: main bearing selection by bore, journal and shell marks',
    locator: 'p. EM-89',
    standing: 'read',
    address: 'https://manualshive.com/en/manual/toyota/1996-land-cruiser/1141571?page=873',
  },
  'clearance-rule': {
    title: 'Bearing maker’s leaflet on oil clearance for each inch of shaft, re-posted text',
    locator: 'example for a 2.000 in journal; thread 2390, page 6',
    standing: 'read',
    address: 'https://mightyram50.net/',
  },
  'shigley-bearing': {
    title: 'Mechanical Engineering Design',
    author: 'J. E. Shigley',
    locator: 'chapter 12: journal bearings, examples 12-1 to 12-4',
    standing: 'recalled',
  },
  'raimondi-boyd': {
    title: 'A solution for the finite journal bearing and its application to analysis and design, 1958',
    author: 'A. A. Raimondi and J. Boyd',
    locator: 'table of the full bearing; in part recomputed here by finite differences',
    standing: 'recalled',
  },
  ocvirk: {
    title: 'Analytical derivation and experimental evaluation of short-bearing approximation, NACA report 1157',
    author: 'G. B. DuBois and F. W. Ocvirk, 1953',
    locator: 'load number and attitude',
    standing: 'recalled',
  },
  petroff: {
    title: 'Friction of a concentric journal bearing, any text on machine design',
    author: 'N. P. Petroff, 1883',
    locator: 'Petroff’s equation',
    standing: 'recalled',
  },
  'bearing-problem': {
    title: 'Worked journal-bearing problem: 1500 lb, 2.5 in, 850 rpm',
    locator: 'solution text',
    standing: 'read',
    address: 'https://holooly.com/?p=592496',
  },
  'shell-grades': {
    title: 'Service data: available main bearings, wall by grade, upper and lower halves',
    locator: '2004 and 2008 3.5 L V6, EM-135',
    standing: 'read',
    address: 'https://lemon-manuals.la',
    seen: 'the wall table; housing and journal bands are recalled',
  },
  'undersize-walls': {
    title: 'Engine manual of a 4.0 L V6: walls of standard and 0.25 mm undersize main bearings',
    locator: 'p. EM-128',
    standing: 'read',
    address: 'https://www.easymanua.ls/nissan/engine/manual?p=128',
  },
  'shell-spread': {
    title: 'TM 5-3820-256-24-5: free spread of a big-end shell',
    author: 'US Department of the Army',
    locator: 'section 5, p. 13',
    standing: 'read',
    address: 'https://waterstorage.tpub.com/',
  },
  'journal-form': {
    title: 'Service data: crankshaft out-of-round and taper, 2005 3.5 L V6',
    locator: 'crankshaft service limits',
    standing: 'read',
    address: 'https://myvehicle.help',
  },
  'thread-gauge': {
    title: 'Engine manual of an industrial 4.3 L V6: clearance by plastic thread',
    locator: 'p. 92; read in a copy whose address was not kept, with three car manuals named in cases/bearings.json',
    standing: 'recalled',
  },
  'end-float': {
    title: 'Service data: crankshaft thrust clearance, 2007 3.5 L V6',
    locator: 'thrust clearance and washer thickness',
    standing: 'read',
    address: 'https://myvehicle.help',
  },
  'ball-anvil': {
    title: 'Measuring wall thickness of main and rod bearings, trade magazine, December 2011',
    locator: 'ball anvil, 90° from the split',
    standing: 'read',
    address: 'http://www.enginebuildermag.com/2011/12/measuring-wall-thickness-of-main-and-rod-bearings/',
  },

  // Metrology
  'gum-welch': {
    title: 'JCGM 100, guide to the expression of uncertainty in measurement (GUM)',
    author: 'Joint Committee for Guides in Metrology, 2008',
    locator: '4.3 shapes, 5.2 correlation, G.4 effective degrees of freedom, table G.2 coverage factors',
    standing: 'recalled',
  },
  'ea-caliper': {
    title: 'EA-4/02, expression of the uncertainty of measurement in calibration',
    author: 'European co-operation for Accreditation',
    locator: 'supplement 2, S10: calibration of a vernier caliper',
    standing: 'recalled',
  },
  'nist-strd': {
    title: 'Statistical Reference Datasets (StRD)',
    author: 'National Institute of Standards and Technology',
    locator: 'univariate NumAcc1 to 4, linear regression Norris, analysis of variance SmLs and SiRstv',
    standing: 'read',
    address: 'https://github.com/scipy/scipy/tree/main/scipy/stats/tests/data',
    seen: 'Norris.dat and the analysis of variance files as they ship with SciPy; NumAcc values are recalled',
  },
  'iso-14253-1': {
    title: 'ISO 14253-1, decision rules for verifying conformity or nonconformity with specifications',
    author: 'International Organization for Standardization',
    locator: 'zones of conformity, nonconformity and uncertainty',
    standing: 'recalled',
  },
  'gauge-study': {
    title: 'Measurement systems analysis, reference manual',
    author: 'Automotive Industry Action Group',
    locator: 'repeatability and reproducibility: average and range, analysis of variance',
    standing: 'recalled',
  },
  'range-constants': {
    title: 'Mean and mean square of the range of normal samples, d2 and d2*',
    author: 'A. J. Duncan, Quality Control and Industrial Statistics, table D3',
    locator: 'recomputed here by numerical integration to six digits',
    standing: 'derived',
  },
  grubbs: {
    title: 'Procedures for detecting outlying observations in samples, Technometrics 11 (1969)',
    author: 'F. E. Grubbs',
    locator: 'critical values from the t distribution; worked data read at pt.scribd.com/document/328020568',
    standing: 'recalled',
  },
  dixon: {
    title: 'Dixon Q test, tables of critical values',
    author: 'D. B. Rorabacher, Anal. Chem. 63 (1991), table 1',
    locator: 'n 3 to 10 read at the address; n 11 to 30 recalled and confirmed by simulation',
    standing: 'read',
    address: 'https://en.wikipedia.org/wiki/Dixon%27s_Q_test',
    seen: 'the table for 3 to 10 readings and the worked data of ten readings',
  },
  'robust-score': {
    title: 'How to detect and handle outliers',
    author: 'B. Iglewicz and D. C. Hoaglin, 1993',
    locator: 'modified z score, limit 3.5',
    standing: 'recalled',
  },
  'vee-block': {
    title: 'Roundness by the three-point method, J. JSPE 43(514)',
    author: 'Japan Society for Precision Engineering, 1977',
    locator: 'magnification by lobes and block angle, abstract; derived again here',
    standing: 'read',
    address: 'https://www.jstage.jst.go.jp/article/jjspe1933/43/514/43_514_1167/_article/-char/en',
    seen: 'abstract',
  },
  'circle-fit': {
    title: 'NIST/SEMATECH e-Handbook of Statistical Methods',
    author: 'National Institute of Standards and Technology',
    locator: '2.3.4.4: roundness from a least-squares circle',
    standing: 'read',
    address: 'https://www.itl.nist.gov/div898/handbook/mpc/section3/mpc344.htm',
  },
  'bore-rules': {
    title: 'Engine service manuals on out-of-round and taper',
    locator: 'three definitions in print: ends of the bore, spread of the heights, top pair against bottom pair',
    standing: 'read',
    address: 'https://www.easymanua.ls/nissan/engine/manual?p=116',
    seen: 'the rule of the ends; the other two in manuals named in cases/metrology.json',
  },
  'liner-seal': {
    title: 'Workshop manual of a V6 with wet liners',
    locator: 'cylinder liner protrusion and choice of seal',
    standing: 'read',
    address: 'https://www.easymanua.ls/delorean/dmc/manual?p=57',
  },
  'compression-rule': {
    title: 'Service manuals: engine compression test',
    locator: 'lowest cylinder at least 70 % (others 75 %) of the highest and not under 100 psi',
    standing: 'read',
    address: 'https://gm.saturn.team',
    seen: 'the test of two manuals of 2006; the 75 % rule in manuals of 1992 to 1997',
  },
  'leak-down': {
    title: 'Service manual: cylinder leakage test',
    locator: 'no more than 25 % leakage',
    standing: 'read',
    address: 'https://charm.li',
    seen: 'the test of a 2002 truck with a 3.9 L engine',
  },
} as const satisfies Readonly<Record<string, BibliographyLine>>;
