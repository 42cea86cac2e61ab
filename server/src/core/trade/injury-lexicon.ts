// The words by which a caution’s consequence is read: bodies, persons, and what is done to them.
// Source: ANSI Z535.4, definitions of the signal words; the lists, common practice.
import { verbForms, wordSet } from './clauses';

export const PERSON = wordSet(`you him her me us someone somebody anyone anybody everyone person people child
  children user wearer technician builder worker whoever yourself himself herself themselves oneself bystander
  kid toddler colleague operator man woman men women human`);

/** Parts of a body that are nothing else. */
export const BODY =
  wordSet(`skin hand finger fingertip thumb eye eyeball eyesight toe wrist muscle tendon ligament nerve
  bone rib eardrum lung throat airway stomach gullet tissue ankle elbow shoulder knee knuckle palm forearm cornea retina
  eyelid lip vein artery windpipe limb`);
/** Words that also mean parts of machines: they count behind a determiner, and before no other noun. */
export const BODY_OR_PART = wordSet(
  'back face foot feet arm leg head neck ear ears mouth nose hair spine chest body tooth teeth tongue',
);
export const DETERMINER = wordSet('the a an your his her their my our one both');
export const SENSE = wordSet('sight eyesight vision hearing');
export const LOST = wordSet('finger fingertip thumb hand eye sight eyesight vision hearing limb arm leg toe foot');
/** “Gold fingers”, “by hand” are no body. */
export const NOT_BODY_BEHIND = wordSet(
  'gold golden contact edge card gilded by with using other at second rubber case',
);
export const NOT_BODY_BEFORE = wordSet('of plate panel up side light guard tool held over out screws rest');

export const MODAL = wordSet('will could may can might would shall should must');
export const DENIES = wordSet('not never no nobody none nothing neither nor without cannot');

export const KILL = verbForms('kill');
export const DEATH = wordSet(
  'death deaths fatal fatally fatality fatalities deadly lethal lethally suffocate suffocates drown',
);
export const SEVERE =
  wordSet(`serious severe grave bad critical seriously severely gravely badly critically life-threatening
  disabling deep third-degree`);
export const WOUND = /^(?:injur|wound|burn|hurt|lacerat|scald|crush)/;
export const FIRE = wordSet('fire fires flame flames ablaze inferno');
export const IGNITE = wordSet('ignite ignites ignited ignition');
/** What burns where it “could burn”: nothing is said of what is lost. */
export const BURNS = wordSet(
  'it they this cable lead plug adapter supply strip connector machine house splitter wiring wire',
);
export const CELLS = wordSet('cell battery batteries magnet');

/** Done to a person even where nothing is named; done to a thing that is named, it injures nobody. */
export const PERSONAL = new Set([
  ...verbForms(
    'injure bruise scald sprain lacerate concuss irritate hurt crush pinch poison faint choke swallow inhale blister',
  ),
  ...wordSet(`injury injuries injurious irritation hurting bruising laceration lacerations concussion poisoning
  dizzy dizziness nausea allergic allergy frostbite unconscious unconsciousness choking hernia fainting sprained
  swallowed`),
]);
/** An injury whatever it is said of. */
export const ALWAYS_INJURY = wordSet(`allergic swallow swallows swallowed inhale inhaled injury injuries
  concussion hernia frostbite explode explodes explosion`);
/** Done to a part of a body that is named in the clause. */
export const TO_BODY = new Set([
  ...verbForms(`cut burn shock strain nip break tear damage harm scratch prick pierce stab puncture graze scrape
  trap catch squash jam wrench twist dislocate pull hit strike splash spray squirt slice fracture sting rip snap
  lodge penetrate slit squeeze rupture crack injure crush pinch destroy ruin perforate corrode attack numb blind
  deafen land fall drop bite clip lacerate gash wound shatter overstretch overstrain`),
  ...wordSet('broke broken torn caught struck fell bit burnt damaging stung'),
]);
/** Behind a part of a body: “eye damage”. */
export const ILLS = wordSet(
  'damage injury injuries irritation pain strain burn burns cut cuts loss wound inflammation',
);
export const INTO = wordSet('into in onto against');
export const GETS = verbForms('get fly splash spray squirt spatter jump go come drip run leak enter reach lodge');
export const TOXIC = wordSet('toxic poisonous harmful noxious caustic corrosive');
export const FUMES = wordSet('fume gas gases vapour vapor smoke dust liquid');
export const STUMBLES = verbForms('trip stumble slip fall collapse');
export const LOSE = wordSet('lose loses losing lost loss cost costs');
export const DESTROYS = verbForms('destroy ruin');

/** What things suffer. */
export const DAMAGE = new Set([
  ...verbForms('ruin damage destroy short fail spoil corrode crack kill bend void'),
  ...wordSet('breaks break broken bent tears tear torn corrosion dies'),
]);
