// The words by which notes of the bench are read. Source of all lists: common practice; makers’ handbooks.
import { names, verbForms, wordSet } from './clauses';

/** What fits into a processor’s socket, and the parts of it that are pressed on. */
export const PROCESSOR = wordSet('processor cpu apu ihs spreader heatspreader');
/** Words that mean the processor only in a step that fits it; `lid` may be the frame of the socket. */
export const PROCESSOR_WHEN_FITTING = wordSet('chip package substrate die silicon');
export const LID = wordSet('lid');

/** A part that, named in a clause, is what the clause is about. */
export const OTHER_PART =
  wordSet(`lever latch latches arm frame plate loadplate ilm retention bracket backplate cover cap cooler fan
  pump block waterblock heatsink heatpipe plug connector lead cable header power eps atx memory module dimm
  stick ram card gpu graphics drive ssd screw nut standoff spring clip hook tab tray holder carrier pad paste
  film tape foil bag box button switch jumper battery cell bolt washer thumbscrew shroud bezel panel door usb
  radiator tube hose fitting adapter riser supply psu cradle clamp bar rail wire hinge flap catch knob nozzle
  brush cloth swab label sticker chipset vrm fin coil fuse shield pushpin pin-header cpu_fan mount mechanism
  lock bridge crossbar wing finger-guard brace`);
export const isOtherPart = (word: string): boolean =>
  names(OTHER_PART, word) || /^\d+(?:\+\d+)?-?pin$/.test(word) || /^cpu[_-]/.test(word) || word === 'm.2';

/** Work in setup or under load: nothing is touched. */
export const SOFTWARE =
  wordSet(`ghz mhz stress load setting setup bios uefi firmware clock voltage limit multiplier ratio state mode
  performance frequency temperature benchmark watt boost throttle menu screen page entry icon list window
  overclock usage percent profile power-limit temps task scheduler widget graph curve`);

/** Verbs of force, and those that may be gentle. */
export const FORCE = verbForms(`press push force squeeze shove tap lean ram jam hammer knock bang hit thump mash
  cram wedge slam punch whack bash pound smack thumb muscle`);
/** Of these, the ones that are a noun as well: “with your thumb”, “one thumb”, “the wedge”. */
export const FORCE_OR_NOUN = verbForms('thumb muscle');
export const PASSIVE_FORCE =
  wordSet(`pressed pushed forced squeezed shoved tapped rammed jammed hammered knocked banged hit thumped mashed
  crammed wedged slammed whacked bashed pounded`);
export const SOFT = verbForms('nudge prod poke click snap wiggle jiggle');
/** Of these, the ones that are said without an object. */
export const FORCE_ALONE = verbForms('press push force bear');
export const FORCE_NOUN = wordSet(`push press pressure force shove tap squeeze knock nudge thump whack bang weight`);
export const GIVING = verbForms(`give apply use put exert add need require want seat lay insert set place lower
  drop fit install mount bring take hold keep finish persuade help ease work slide sit settle go goes went`);
export const BE = wordSet('is are was were be been being gets get got');
export const FINITE =
  wordSet(`is are was were will would can could may might should must has does bends bend bent ruins damages
  breaks`);

/** What may stand between a verb and the thing it is done to. */
export const PASSED_OVER =
  wordSet(`the a an this that your his her their its my our one two three four both each all every new old whole
  entire then just simply only now again very too quite so more bit little hard harder down in into on onto upon
  against at home flat flush straight with of some any top corner corners edge edges side sides middle center
  centre surface upper lower outer thumb thumbs finger fingers fingertip fingertips palm palms hand hands fist
  heel knuckle knuckles force pressure weight gold golden gilded gold-plated green bare metal silver opposite
  diagonal steady even equal light gentle firm slight strong good real solid considerable moderate back body
  place socket seat position half small quick`);
export const passedOver = (word: string): boolean => PASSED_OVER.has(word) || (word.endsWith('ly') && word.length > 4);

/** What may follow the thing: any other noun behind “CPU” makes it a compound. */
const FOLLOWS =
  wordSet(`down in into home on onto flat flush straight level hard harder with at by against and or as for
  again once a all far deep deeper further together lid top corner corners edge edges side sides middle ihs
  spreader using through here there please too so is are has must should can may needs need gets always is to
  the its your until while whilst heatspreader surface package never body itself into-place inwards downwards
  downward inward two twice three well good proper quite very really just only enough`);
export const mayFollow = (word: string | undefined): boolean =>
  word === undefined || FOLLOWS.has(word) || (word.endsWith('ly') && word.length > 4);

/** A clause that tells what comes of it warns of it. */
export const WARNS =
  wordSet(`bend bends ruin ruins harm harms damage damages destroy destroys kill kills corrode corrodes crush
  crushes break breaks crack cracks scratch scratches short shorts wrong forbidden banned how void voids
  discharges grease charges charge leave leaves stay stays useless pointless dangerous risky deadly
  burn burns hurt hurts`);

/** Laid in by hand: “it” is then the processor. */
export const LAYING_IN = verbForms('lay put place drop set insert seat lower fit install');
