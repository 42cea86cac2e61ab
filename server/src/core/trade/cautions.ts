// The cautions this job needs, each with hazard, consequence, avoidance and to whom it defers.
import type { Caution } from './signal-words';

export type CautionId =
  | 'mains-inside-supply'
  | 'powered-inside'
  | 'circuit-overload'
  | 'adapter-fire'
  | 'strap-on-energised'
  | 'coin-cell'
  | 'gallium-paste'
  | 'liquid-leak'
  | 'lifting'
  | 'glass-panel'
  | 'sharp-edges'
  | 'hot-parts'
  | 'static-to-parts'
  | 'update-interrupted'
  | 'overloaded-supply'
  | 'wrong-mains-voltage'
  | 'no-earth'
  | 'board-on-metal'
  | 'socket-contacts'
  | 'start-uncooled'
  | 'card-in-transit'
  | 'drive-screws'
  | 'no-way-for-heat'
  | 'conductive-paste'
  | 'header-overload'
  | 'light-voltage'
  | 'thin-air'
  | 'dew'
  | 'hanging-cooler';

/**
 * The job's cautions. Words are graded by `SIGNAL_WORDS`; each defers to those who know the part or the place.
 * Facts: 330 µF at 400 V hold 26 J (E = C U² / 2); 80 % rule, NFPA 70; 23 kg, NIOSH 94-110;
 * coin cell within two hours, makers' cell warnings; the rest common practice.
 */
export const CAUTIONS: Readonly<Record<CautionId, Caution>> = {
  'mains-inside-supply': {
    word: 'DANGER',
    hazard: 'Inside a power supply parts stay at up to 400 V after it is unplugged.',
    consequence: 'Touching them will kill or seriously burn.',
    avoidance: 'Never open a supply. Unplug its cable before the case is opened, and replace a faulty supply whole.',
    defersTo: 'the supply maker and a qualified repairer',
    source: 'makers’ handbooks; stored energy E = C U² / 2',
  },
  'powered-inside': {
    word: 'CAUTION',
    hazard: 'A machine on the mains keeps parts of its board powered though it is off, and its fans can start.',
    consequence: 'A slipped tool or a pulled module could ruin the board, and a fan could cut fingers.',
    avoidance: 'Unplug the cable and press the power button once before hands go in; never open the supply itself.',
    defersTo: 'the handbooks of case, board and supply',
    source: 'makers’ service manuals; common practice',
  },
  'circuit-overload': {
    word: 'WARNING',
    hazard: 'A circuit or power strip loaded beyond what it carries for hours overheats.',
    consequence: 'It could start a fire.',
    avoidance:
      'Add up what shares the circuit, and move load elsewhere where it is too much. Plug power strips into wall ' +
      'outlets only.',
    defersTo: 'the local electrical code and a licensed electrician',
    source: 'NFPA 70, 210.20(A); common practice',
  },
  'adapter-fire': {
    word: 'WARNING',
    hazard:
      'Moulded adapters, cables of another supply and connectors not pushed home overheat or put 12 V on ' +
      'the wrong contact.',
    consequence: 'They could burn, and ruin drives and cards.',
    avoidance: 'Use the cables that came with this supply, push each plug in fully, and leave moulded adapters out.',
    defersTo: 'the handbooks of the supply and of the part fed',
    source: 'common practice',
  },
  'strap-on-energised': {
    word: 'WARNING',
    hazard: 'A strap ties the wearer to earth beside live parts.',
    consequence: 'A shock could pass through the body and kill.',
    avoidance: 'Take the strap off before anything is powered, and wear only one with a resistor in its cord.',
    defersTo: 'the strap maker’s instructions and the workshop’s safety rules',
    source: 'ANSI/ESD S1.1; ESD TR20.20; stricter here',
  },
  'coin-cell': {
    word: 'WARNING',
    hazard: 'The clock’s coin cell is small enough to be swallowed.',
    consequence: 'Swallowed, it could burn through tissue within two hours and kill.',
    avoidance:
      'Keep cells away from children, tape over used ones, and call emergency services at once if one is swallowed.',
    defersTo: 'the cell maker’s warning and medical help',
    source: 'makers’ cell warnings',
  },
  'gallium-paste': {
    word: 'CAUTION',
    hazard: 'Gallium paste irritates, eats aluminium and conducts electricity.',
    consequence:
      'It could irritate skin and eyes, destroy an aluminium cooler within days and short the parts it runs onto.',
    avoidance: 'Wear gloves and glasses; use a thin film on copper or nickel only, with the parts around it masked.',
    defersTo: 'the paste’s safety data sheet and the cooler’s handbook',
    source: 'studies of gallium in aluminium; common practice',
  },
  'liquid-leak': {
    word: 'NOTICE',
    hazard: 'Coolant that leaks conducts once it has picked up dust and ions.',
    consequence: 'It could short and ruin what it reaches.',
    avoidance:
      'Fill and leak-test with only the pump powered, dry cloth under each joint, before anything else gets power.',
    defersTo: 'the cooler’s handbook',
    source: 'common practice',
  },
  lifting: {
    word: 'CAUTION',
    hazard: 'A finished machine is heavy and awkward; 23 kg is the limit for one person only under ideal conditions.',
    consequence: 'Lifting it alone could injure the back or crush fingers.',
    avoidance: 'Weigh it or add it up, lift with two or use a trolley, and take heavy cards out before carriage.',
    defersTo: 'the workplace’s rules on lifting',
    source: 'DHHS (NIOSH) Publication No. 94-110',
  },
  'glass-panel': {
    word: 'CAUTION',
    hazard: 'Tempered glass bursts when its edge or corner meets a hard floor.',
    consequence: 'Fragments could cut hands and eyes.',
    avoidance: 'Take the panel off first. Lay it flat on cloth, away from the work. Never set it on tile or stone.',
    defersTo: 'the case’s handbook',
    source: 'common practice',
  },
  'sharp-edges': {
    word: 'CAUTION',
    hazard: 'Cut sheet metal, fins and shields have sharp edges.',
    consequence: 'They could cut fingers.',
    avoidance: 'Hold parts by their outer frame, wear cut-resistant gloves for the case, and do not force what sticks.',
    defersTo: 'the case’s handbook',
    source: 'common practice',
  },
  'hot-parts': {
    word: 'CAUTION',
    hazard: 'Coolers, drives and cards stay hot after a stress run.',
    consequence: 'Touching them could burn the skin.',
    avoidance: 'Let the machine stand switched off until it is cool before reaching in.',
    defersTo: 'the parts’ handbooks',
    source: 'common practice',
  },
  'static-to-parts': {
    word: 'NOTICE',
    hazard: 'People carry charges that they do not feel.',
    consequence: 'A discharge could ruin a part at once or weaken it so that it fails later.',
    avoidance:
      'With the machine unplugged, bring person, chassis and part to one potential; hold parts by their edges.',
    defersTo: 'the parts’ handbooks',
    source: 'ANSI/ESD S20.20; common practice',
  },
  'overloaded-supply': {
    word: 'WARNING',
    hazard: 'A supply, connector or wire that carries more than it is rated for overheats.',
    consequence: 'It could burn, and take the parts it feeds with it.',
    avoidance:
      'Keep the sum of the loads below the rating. Give each card connector a cable of its own. Push connectors in ' +
      'fully.',
    defersTo: 'the handbooks of the supply and of the parts fed',
    source: 'ATX Version 3 design guide, doc. 336521; common practice',
  },
  'wrong-mains-voltage': {
    word: 'WARNING',
    hazard: 'A supply that is set or made for a lower mains voltage bursts parts inside when it is plugged in.',
    consequence: 'It could start a fire, and hot fragments could injure eyes.',
    avoidance: 'Read the supply’s label and set its switch before its cable goes in; never switch it under power.',
    defersTo: 'the supply’s handbook and a licensed electrician',
    source: 'ATX12V Power Supply Design Guide, version 2.0, table 1; common practice',
  },
  'no-earth': {
    word: 'WARNING',
    hazard: 'Without an earth contact a fault puts mains voltage on the case.',
    consequence: 'Touching it could kill.',
    avoidance: 'Plug in only where the earth contact is connected, and never lift or bridge it.',
    defersTo: 'the local electrical code and a licensed electrician',
    source: 'common practice',
  },
  'board-on-metal': {
    word: 'NOTICE',
    hazard: 'Metal that touches the underside of a board joins contacts that must stay apart.',
    consequence: 'It could ruin the board and what is plugged into it at the first start.',
    avoidance:
      'Set standoffs only where the board has a hole, as high as its underside needs. Look between board and tray ' +
      'before power.',
    defersTo: 'the handbooks of board and case',
    source: 'microATX Specification 1.2, page 10; common practice',
  },
  'update-interrupted': {
    word: 'NOTICE',
    hazard: 'A firmware update that is interrupted or written wrongly leaves the board half written.',
    consequence: 'It could make the board unable to start until its maker repairs it.',
    avoidance:
      'Update with memory at its standard speed, on mains that stay. Touch nothing until the board says that it is ' +
      'done.',
    defersTo: 'the board’s handbook',
    source: 'common practice; makers’ handbooks',
  },
  'drive-screws': {
    word: 'NOTICE',
    hazard: 'Drive screws come in two threads that start in each other’s holes, and in several lengths.',
    consequence: 'The wrong one could strip the drive’s thread or press into its circuit board and ruin it.',
    avoidance: 'Use only screws of the stated thread and length. Turn each in by hand first, and stop where it binds.',
    defersTo: 'the handbooks of drive and case',
    source: 'SFF-8301 and SFF-8201; common practice',
  },
  'socket-contacts': {
    word: 'NOTICE',
    hazard: 'The contacts of socket and processor are springs and pins finer than a hair.',
    consequence: 'Pressed, touched or met at an angle they could bend, and ruin board or processor.',
    avoidance:
      'Keep the cover on until the processor goes in. Lay it in by its marks without force, and let the lever do ' +
      'the rest.',
    defersTo: 'the handbooks of board and processor',
    source: 'makers’ handbooks; common practice',
  },
  'start-uncooled': {
    word: 'NOTICE',
    hazard:
      'A processor without air over its cooler is past its limit within seconds to minutes; a board ' +
      'without its processor cable pulls all its power through the other connector.',
    consequence: 'It could shut down, slow down or shorten the life of the parts, and overheat the connector.',
    avoidance: 'Plug in the fans and both board cables before the first start.',
    defersTo: 'the handbooks of board and cooler',
    source: 'common practice',
  },
  'card-in-transit': {
    word: 'NOTICE',
    hazard: 'A heavy card swings in its slot at every jolt.',
    consequence: 'It could tear the slot from the board, and break what lies below.',
    avoidance: 'Take heavy cards out for carriage, in their own packing.',
    defersTo: 'the handbooks of card and case',
    source: 'common practice',
  },
  'no-way-for-heat': {
    word: 'NOTICE',
    hazard: 'Between a dry cooler and a processor’s lid there is air, which hardly lets heat through.',
    consequence: 'The processor could shut down within seconds of its first load, and be ruined.',
    avoidance: 'Bring the paste on before the cooler, in the volume that the lid wants; do not start without it.',
    defersTo: 'the handbooks of cooler and paste',
    source: 'common practice',
  },
  'conductive-paste': {
    word: 'NOTICE',
    hazard: 'Paste that conducts, or stores charge, bridges contacts where it is pressed out.',
    consequence: 'It could short and ruin the processor or the board at the first start.',
    avoidance: 'Cover the parts around the lid, bring on no more than the lid wants, and look before power is on.',
    defersTo: 'the paste’s data sheet and the handbooks of board and processor',
    source: 'common practice',
  },
  'header-overload': {
    word: 'NOTICE',
    hazard: 'A fan header feeds its fans through thin tracks of the board.',
    consequence: 'More current than it is made for could burn the header, and stop every fan on it.',
    avoidance:
      'Add up the currents at the start. Share the fans among headers, or feed them from the supply through a ' +
      'splitter.',
    defersTo: 'the board’s handbook',
    source: '4-Wire Pulse Width Modulation (PWM) Controlled Fans Specification, 2.1.1; common practice',
  },
  'light-voltage': {
    word: 'NOTICE',
    hazard: 'Headers for lights carry 5 V or 12 V, and their connectors can be forced on to the other.',
    consequence: 'Lights made for 5 V could be ruined at once on 12 V, and the header with them.',
    avoidance: 'Read the voltage printed beside the header and on the cable before plugging in.',
    defersTo: 'the board’s handbook',
    source: 'common practice',
  },
  'thin-air': {
    word: 'NOTICE',
    hazard: 'Up high the air is thinner: the heads of a hard disk fly on it, and it cools every drive.',
    consequence: 'Above its stated altitude heads could touch the disk and destroy the data, or a drive overheat.',
    avoidance: 'Use a drive rated for the altitude, or one without moving parts, and keep copies elsewhere.',
    defersTo: 'the drive’s data sheet',
    source: 'common practice',
  },
  dew: {
    word: 'NOTICE',
    hazard: 'Water settles on cold parts in a warm, humid room.',
    consequence: 'Powered while wet they could short and be ruined.',
    avoidance:
      'Leave parts sealed in their packing until they are as warm as the room. Let visible dew dry before power.',
    defersTo: 'the parts’ handbooks',
    source: 'ASHRAE, Cold Weather Shipping Acclimation and Best Practices; common practice',
  },
  'hanging-cooler': {
    word: 'NOTICE',
    hazard: 'A heavy cooler hangs on a standing board, and swings on the way.',
    consequence: 'It could bend the board, tear its mount out or crack solder joints.',
    avoidance: 'Stay below the mass that board and cooler state, and take a heavy cooler off before carriage.',
    defersTo: 'the handbooks of board and cooler',
    source: 'common practice',
  },
};
