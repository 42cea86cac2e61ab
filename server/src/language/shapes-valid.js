// Validators of what an editor sends. Generated from `server/tools/generators/message-validators.ts` and client/package.json by `npm run generate`; do not edit.
"use strict";
export const settings = validate10;
const schema11 = {"type":"object","properties":{"from":{"type":"string","enum":["harm","stop","shortfall","note","unknown"]},"hints":{"type":"object","properties":{"link":{"type":"boolean"},"power":{"type":"boolean"},"clearance":{"type":"boolean"},"endurance":{"type":"boolean"},"firmware":{"type":"boolean"}}},"pause":{"type":"integer","minimum":0,"maximum":60000}}};

function validate10(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.from !== undefined){
let data0 = data.from;
const _errs1 = errors;
if(typeof data0 !== "string"){
validate10.errors = [{instancePath:instancePath+"/from",schemaPath:"#/properties/from/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
if(!(((((data0 === "harm") || (data0 === "stop")) || (data0 === "shortfall")) || (data0 === "note")) || (data0 === "unknown"))){
validate10.errors = [{instancePath:instancePath+"/from",schemaPath:"#/properties/from/enum",keyword:"enum",params:{allowedValues: schema11.properties.from.enum},message:"must be equal to one of the allowed values"}];
return false;
}
var valid0 = _errs1 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.hints !== undefined){
let data1 = data.hints;
const _errs3 = errors;
if(errors === _errs3){
if(data1 && typeof data1 == "object" && !Array.isArray(data1)){
if(data1.link !== undefined){
const _errs5 = errors;
if(typeof data1.link !== "boolean"){
validate10.errors = [{instancePath:instancePath+"/hints/link",schemaPath:"#/properties/hints/properties/link/type",keyword:"type",params:{type: "boolean"},message:"must be boolean"}];
return false;
}
var valid1 = _errs5 === errors;
}
else {
var valid1 = true;
}
if(valid1){
if(data1.power !== undefined){
const _errs7 = errors;
if(typeof data1.power !== "boolean"){
validate10.errors = [{instancePath:instancePath+"/hints/power",schemaPath:"#/properties/hints/properties/power/type",keyword:"type",params:{type: "boolean"},message:"must be boolean"}];
return false;
}
var valid1 = _errs7 === errors;
}
else {
var valid1 = true;
}
if(valid1){
if(data1.clearance !== undefined){
const _errs9 = errors;
if(typeof data1.clearance !== "boolean"){
validate10.errors = [{instancePath:instancePath+"/hints/clearance",schemaPath:"#/properties/hints/properties/clearance/type",keyword:"type",params:{type: "boolean"},message:"must be boolean"}];
return false;
}
var valid1 = _errs9 === errors;
}
else {
var valid1 = true;
}
if(valid1){
if(data1.endurance !== undefined){
const _errs11 = errors;
if(typeof data1.endurance !== "boolean"){
validate10.errors = [{instancePath:instancePath+"/hints/endurance",schemaPath:"#/properties/hints/properties/endurance/type",keyword:"type",params:{type: "boolean"},message:"must be boolean"}];
return false;
}
var valid1 = _errs11 === errors;
}
else {
var valid1 = true;
}
if(valid1){
if(data1.firmware !== undefined){
const _errs13 = errors;
if(typeof data1.firmware !== "boolean"){
validate10.errors = [{instancePath:instancePath+"/hints/firmware",schemaPath:"#/properties/hints/properties/firmware/type",keyword:"type",params:{type: "boolean"},message:"must be boolean"}];
return false;
}
var valid1 = _errs13 === errors;
}
else {
var valid1 = true;
}
}
}
}
}
}
else {
validate10.errors = [{instancePath:instancePath+"/hints",schemaPath:"#/properties/hints/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs3 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.pause !== undefined){
let data7 = data.pause;
const _errs15 = errors;
if(!(((typeof data7 == "number") && (!(data7 % 1) && !isNaN(data7))) && (isFinite(data7)))){
validate10.errors = [{instancePath:instancePath+"/pause",schemaPath:"#/properties/pause/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs15){
if((typeof data7 == "number") && (isFinite(data7))){
if(data7 > 60000 || isNaN(data7)){
validate10.errors = [{instancePath:instancePath+"/pause",schemaPath:"#/properties/pause/maximum",keyword:"maximum",params:{comparison: "<=", limit: 60000},message:"must be <= 60000"}];
return false;
}
else {
if(data7 < 0 || isNaN(data7)){
validate10.errors = [{instancePath:instancePath+"/pause",schemaPath:"#/properties/pause/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
}
var valid0 = _errs15 === errors;
}
else {
var valid0 = true;
}
}
}
}
else {
validate10.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate10.errors = vErrors;
return errors === 0;
}

export const clientOptions = validate11;
const schema12 = {"type":"object","properties":{"explains":{"type":"boolean"},"files":{"type":"boolean"},"language":{"type":"string","pattern":"^[A-Za-z][A-Za-z0-9_.@-]*$"},"lenses":{"type":"boolean"},"hintsAbove":{"type":"boolean"},"showsFindings":{"type":"boolean"},"settings":{"type":"object"},"pages":{"type":"string","pattern":"^[a-z][a-z0-9-]*$"},"workings":{"type":"string","pattern":"^[^`\\\\\\p{Cc}]{1,80}$"},"writesAt":{"type":"boolean"},"guides":{"type":"boolean"},"suggest":{"type":"string","pattern":"^[A-Za-z][A-Za-z0-9.]*$"},"wholeOnRequest":{"type":"boolean"}},"required":[]};
const pattern0 = new RegExp("^[A-Za-z][A-Za-z0-9_.@-]*$", "u");
const pattern1 = new RegExp("^[a-z][a-z0-9-]*$", "u");
const pattern2 = new RegExp("^[^`\\\\\\p{Cc}]{1,80}$", "u");
const pattern3 = new RegExp("^[A-Za-z][A-Za-z0-9.]*$", "u");

function validate11(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.explains !== undefined){
const _errs1 = errors;
if(typeof data.explains !== "boolean"){
validate11.errors = [{instancePath:instancePath+"/explains",schemaPath:"#/properties/explains/type",keyword:"type",params:{type: "boolean"},message:"must be boolean"}];
return false;
}
var valid0 = _errs1 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.files !== undefined){
const _errs3 = errors;
if(typeof data.files !== "boolean"){
validate11.errors = [{instancePath:instancePath+"/files",schemaPath:"#/properties/files/type",keyword:"type",params:{type: "boolean"},message:"must be boolean"}];
return false;
}
var valid0 = _errs3 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.language !== undefined){
let data2 = data.language;
const _errs5 = errors;
if(errors === _errs5){
if(typeof data2 === "string"){
if(!pattern0.test(data2)){
validate11.errors = [{instancePath:instancePath+"/language",schemaPath:"#/properties/language/pattern",keyword:"pattern",params:{pattern: "^[A-Za-z][A-Za-z0-9_.@-]*$"},message:"must match pattern \""+"^[A-Za-z][A-Za-z0-9_.@-]*$"+"\""}];
return false;
}
}
else {
validate11.errors = [{instancePath:instancePath+"/language",schemaPath:"#/properties/language/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
var valid0 = _errs5 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.lenses !== undefined){
const _errs7 = errors;
if(typeof data.lenses !== "boolean"){
validate11.errors = [{instancePath:instancePath+"/lenses",schemaPath:"#/properties/lenses/type",keyword:"type",params:{type: "boolean"},message:"must be boolean"}];
return false;
}
var valid0 = _errs7 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.hintsAbove !== undefined){
const _errs9 = errors;
if(typeof data.hintsAbove !== "boolean"){
validate11.errors = [{instancePath:instancePath+"/hintsAbove",schemaPath:"#/properties/hintsAbove/type",keyword:"type",params:{type: "boolean"},message:"must be boolean"}];
return false;
}
var valid0 = _errs9 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.showsFindings !== undefined){
const _errs11 = errors;
if(typeof data.showsFindings !== "boolean"){
validate11.errors = [{instancePath:instancePath+"/showsFindings",schemaPath:"#/properties/showsFindings/type",keyword:"type",params:{type: "boolean"},message:"must be boolean"}];
return false;
}
var valid0 = _errs11 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.settings !== undefined){
let data6 = data.settings;
const _errs13 = errors;
if(!(data6 && typeof data6 == "object" && !Array.isArray(data6))){
validate11.errors = [{instancePath:instancePath+"/settings",schemaPath:"#/properties/settings/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
var valid0 = _errs13 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.pages !== undefined){
let data7 = data.pages;
const _errs15 = errors;
if(errors === _errs15){
if(typeof data7 === "string"){
if(!pattern1.test(data7)){
validate11.errors = [{instancePath:instancePath+"/pages",schemaPath:"#/properties/pages/pattern",keyword:"pattern",params:{pattern: "^[a-z][a-z0-9-]*$"},message:"must match pattern \""+"^[a-z][a-z0-9-]*$"+"\""}];
return false;
}
}
else {
validate11.errors = [{instancePath:instancePath+"/pages",schemaPath:"#/properties/pages/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
var valid0 = _errs15 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.workings !== undefined){
let data8 = data.workings;
const _errs17 = errors;
if(errors === _errs17){
if(typeof data8 === "string"){
if(!pattern2.test(data8)){
validate11.errors = [{instancePath:instancePath+"/workings",schemaPath:"#/properties/workings/pattern",keyword:"pattern",params:{pattern: "^[^`\\\\\\p{Cc}]{1,80}$"},message:"must match pattern \""+"^[^`\\\\\\p{Cc}]{1,80}$"+"\""}];
return false;
}
}
else {
validate11.errors = [{instancePath:instancePath+"/workings",schemaPath:"#/properties/workings/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
var valid0 = _errs17 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.writesAt !== undefined){
const _errs19 = errors;
if(typeof data.writesAt !== "boolean"){
validate11.errors = [{instancePath:instancePath+"/writesAt",schemaPath:"#/properties/writesAt/type",keyword:"type",params:{type: "boolean"},message:"must be boolean"}];
return false;
}
var valid0 = _errs19 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.guides !== undefined){
const _errs21 = errors;
if(typeof data.guides !== "boolean"){
validate11.errors = [{instancePath:instancePath+"/guides",schemaPath:"#/properties/guides/type",keyword:"type",params:{type: "boolean"},message:"must be boolean"}];
return false;
}
var valid0 = _errs21 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.suggest !== undefined){
let data11 = data.suggest;
const _errs23 = errors;
if(errors === _errs23){
if(typeof data11 === "string"){
if(!pattern3.test(data11)){
validate11.errors = [{instancePath:instancePath+"/suggest",schemaPath:"#/properties/suggest/pattern",keyword:"pattern",params:{pattern: "^[A-Za-z][A-Za-z0-9.]*$"},message:"must match pattern \""+"^[A-Za-z][A-Za-z0-9.]*$"+"\""}];
return false;
}
}
else {
validate11.errors = [{instancePath:instancePath+"/suggest",schemaPath:"#/properties/suggest/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
var valid0 = _errs23 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.wholeOnRequest !== undefined){
const _errs25 = errors;
if(typeof data.wholeOnRequest !== "boolean"){
validate11.errors = [{instancePath:instancePath+"/wholeOnRequest",schemaPath:"#/properties/wholeOnRequest/type",keyword:"type",params:{type: "boolean"},message:"must be boolean"}];
return false;
}
var valid0 = _errs25 === errors;
}
else {
var valid0 = true;
}
}
}
}
}
}
}
}
}
}
}
}
}
}
else {
validate11.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate11.errors = vErrors;
return errors === 0;
}

export const foundPath = validate12;
const schema13 = {"anyOf":[{"type":"null"},{"type":"object","properties":{"kind":{"enum":["file","folder"]},"bound":{"type":"string"}},"required":["kind","bound"]}]};

function validate12(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
const _errs0 = errors;
let valid0 = false;
const _errs1 = errors;
if(data !== null){
const err0 = {instancePath,schemaPath:"#/anyOf/0/type",keyword:"type",params:{type: "null"},message:"must be null"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
var _valid0 = _errs1 === errors;
valid0 = valid0 || _valid0;
if(!valid0){
const _errs3 = errors;
if(errors === _errs3){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if(((data.kind === undefined) && (missing0 = "kind")) || ((data.bound === undefined) && (missing0 = "bound"))){
const err1 = {instancePath,schemaPath:"#/anyOf/1/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
else {
if(data.kind !== undefined){
let data0 = data.kind;
const _errs5 = errors;
if(!((data0 === "file") || (data0 === "folder"))){
const err2 = {instancePath:instancePath+"/kind",schemaPath:"#/anyOf/1/properties/kind/enum",keyword:"enum",params:{allowedValues: schema13.anyOf[1].properties.kind.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
var valid1 = _errs5 === errors;
}
else {
var valid1 = true;
}
if(valid1){
if(data.bound !== undefined){
const _errs6 = errors;
if(typeof data.bound !== "string"){
const err3 = {instancePath:instancePath+"/bound",schemaPath:"#/anyOf/1/properties/bound/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
var valid1 = _errs6 === errors;
}
else {
var valid1 = true;
}
}
}
}
else {
const err4 = {instancePath,schemaPath:"#/anyOf/1/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
var _valid0 = _errs3 === errors;
valid0 = valid0 || _valid0;
}
if(!valid0){
const err5 = {instancePath,schemaPath:"#/anyOf",keyword:"anyOf",params:{},message:"must match a schema in anyOf"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
validate12.errors = vErrors;
return false;
}
else {
errors = _errs0;
if(vErrors !== null){
if(_errs0){
vErrors.length = _errs0;
}
else {
vErrors = null;
}
}
}
validate12.errors = vErrors;
return errors === 0;
}

export const readFile = validate13;
const schema14 = {"anyOf":[{"type":"null"},{"type":"object","properties":{"base64":{"type":"string"}},"required":["base64"]},{"type":"object","properties":{"refused":{"enum":["no-file","link","large"]}},"required":["refused"]}]};

function validate13(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
const _errs0 = errors;
let valid0 = false;
const _errs1 = errors;
if(data !== null){
const err0 = {instancePath,schemaPath:"#/anyOf/0/type",keyword:"type",params:{type: "null"},message:"must be null"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
var _valid0 = _errs1 === errors;
valid0 = valid0 || _valid0;
if(!valid0){
const _errs3 = errors;
if(errors === _errs3){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if((data.base64 === undefined) && (missing0 = "base64")){
const err1 = {instancePath,schemaPath:"#/anyOf/1/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
else {
if(data.base64 !== undefined){
if(typeof data.base64 !== "string"){
const err2 = {instancePath:instancePath+"/base64",schemaPath:"#/anyOf/1/properties/base64/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
}
}
else {
const err3 = {instancePath,schemaPath:"#/anyOf/1/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
var _valid0 = _errs3 === errors;
valid0 = valid0 || _valid0;
if(!valid0){
const _errs7 = errors;
if(errors === _errs7){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing1;
if((data.refused === undefined) && (missing1 = "refused")){
const err4 = {instancePath,schemaPath:"#/anyOf/2/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
else {
if(data.refused !== undefined){
let data1 = data.refused;
if(!(((data1 === "no-file") || (data1 === "link")) || (data1 === "large"))){
const err5 = {instancePath:instancePath+"/refused",schemaPath:"#/anyOf/2/properties/refused/enum",keyword:"enum",params:{allowedValues: schema14.anyOf[2].properties.refused.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
}
}
else {
const err6 = {instancePath,schemaPath:"#/anyOf/2/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
var _valid0 = _errs7 === errors;
valid0 = valid0 || _valid0;
}
}
if(!valid0){
const err7 = {instancePath,schemaPath:"#/anyOf",keyword:"anyOf",params:{},message:"must match a schema in anyOf"};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
validate13.errors = vErrors;
return false;
}
else {
errors = _errs0;
if(vErrors !== null){
if(_errs0){
vErrors.length = _errs0;
}
else {
vErrors = null;
}
}
}
validate13.errors = vErrors;
return errors === 0;
}

export const listedFolder = validate14;
const schema15 = {"anyOf":[{"type":"null"},{"type":"array","items":{"type":"object","properties":{"name":{"type":"string"},"kind":{"enum":["file","folder","link","other"]}},"required":["name","kind"]}},{"type":"object","properties":{"refused":{"enum":["no-file","link","large"]}},"required":["refused"]}]};

function validate14(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
const _errs0 = errors;
let valid0 = false;
const _errs1 = errors;
if(data !== null){
const err0 = {instancePath,schemaPath:"#/anyOf/0/type",keyword:"type",params:{type: "null"},message:"must be null"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
var _valid0 = _errs1 === errors;
valid0 = valid0 || _valid0;
if(!valid0){
const _errs3 = errors;
if(errors === _errs3){
if(Array.isArray(data)){
var valid1 = true;
const len0 = data.length;
for(let i0=0; i0<len0; i0++){
let data0 = data[i0];
const _errs5 = errors;
if(errors === _errs5){
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing0;
if(((data0.name === undefined) && (missing0 = "name")) || ((data0.kind === undefined) && (missing0 = "kind"))){
const err1 = {instancePath:instancePath+"/" + i0,schemaPath:"#/anyOf/1/items/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
else {
if(data0.name !== undefined){
const _errs7 = errors;
if(typeof data0.name !== "string"){
const err2 = {instancePath:instancePath+"/" + i0+"/name",schemaPath:"#/anyOf/1/items/properties/name/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
var valid2 = _errs7 === errors;
}
else {
var valid2 = true;
}
if(valid2){
if(data0.kind !== undefined){
let data2 = data0.kind;
const _errs9 = errors;
if(!((((data2 === "file") || (data2 === "folder")) || (data2 === "link")) || (data2 === "other"))){
const err3 = {instancePath:instancePath+"/" + i0+"/kind",schemaPath:"#/anyOf/1/items/properties/kind/enum",keyword:"enum",params:{allowedValues: schema15.anyOf[1].items.properties.kind.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
var valid2 = _errs9 === errors;
}
else {
var valid2 = true;
}
}
}
}
else {
const err4 = {instancePath:instancePath+"/" + i0,schemaPath:"#/anyOf/1/items/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
var valid1 = _errs5 === errors;
if(!valid1){
break;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/anyOf/1/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
var _valid0 = _errs3 === errors;
valid0 = valid0 || _valid0;
if(!valid0){
const _errs10 = errors;
if(errors === _errs10){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing1;
if((data.refused === undefined) && (missing1 = "refused")){
const err6 = {instancePath,schemaPath:"#/anyOf/2/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
else {
if(data.refused !== undefined){
let data3 = data.refused;
if(!(((data3 === "no-file") || (data3 === "link")) || (data3 === "large"))){
const err7 = {instancePath:instancePath+"/refused",schemaPath:"#/anyOf/2/properties/refused/enum",keyword:"enum",params:{allowedValues: schema15.anyOf[2].properties.refused.enum},message:"must be equal to one of the allowed values"};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
}
}
else {
const err8 = {instancePath,schemaPath:"#/anyOf/2/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
var _valid0 = _errs10 === errors;
valid0 = valid0 || _valid0;
}
}
if(!valid0){
const err9 = {instancePath,schemaPath:"#/anyOf",keyword:"anyOf",params:{},message:"must match a schema in anyOf"};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
validate14.errors = vErrors;
return false;
}
else {
errors = _errs0;
if(vErrors !== null){
if(_errs0){
vErrors.length = _errs0;
}
else {
vErrors = null;
}
}
}
validate14.errors = vErrors;
return errors === 0;
}

export const initialize = validate15;
const schema16 = {"type":"object","properties":{"rootUri":{"anyOf":[{"type":"null"},{"type":"string"}]},"workspaceFolders":{"anyOf":[{"type":"null"},{"type":"array","items":{"type":"object","properties":{"uri":{"type":"string"}},"required":["uri"]}}]},"capabilities":{"type":"object","properties":{"workspace":{"anyOf":[{"type":"null"},{"type":"object","properties":{},"required":[]}]},"textDocument":{"anyOf":[{"type":"null"},{"type":"object","properties":{"hover":{"anyOf":[{"type":"null"},{"type":"object","properties":{"contentFormat":{"anyOf":[{"type":"null"},{"type":"array"}]}},"required":[]}]},"completion":{"anyOf":[{"type":"null"},{"type":"object","properties":{},"required":[]}]}},"required":[]}]}},"required":[]}},"required":["capabilities"]};

function validate15(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if((data.capabilities === undefined) && (missing0 = "capabilities")){
validate15.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.rootUri !== undefined){
let data0 = data.rootUri;
const _errs1 = errors;
const _errs2 = errors;
let valid1 = false;
const _errs3 = errors;
if(data0 !== null){
const err0 = {instancePath:instancePath+"/rootUri",schemaPath:"#/properties/rootUri/anyOf/0/type",keyword:"type",params:{type: "null"},message:"must be null"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
var _valid0 = _errs3 === errors;
valid1 = valid1 || _valid0;
if(!valid1){
const _errs5 = errors;
if(typeof data0 !== "string"){
const err1 = {instancePath:instancePath+"/rootUri",schemaPath:"#/properties/rootUri/anyOf/1/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
var _valid0 = _errs5 === errors;
valid1 = valid1 || _valid0;
}
if(!valid1){
const err2 = {instancePath:instancePath+"/rootUri",schemaPath:"#/properties/rootUri/anyOf",keyword:"anyOf",params:{},message:"must match a schema in anyOf"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
validate15.errors = vErrors;
return false;
}
else {
errors = _errs2;
if(vErrors !== null){
if(_errs2){
vErrors.length = _errs2;
}
else {
vErrors = null;
}
}
}
var valid0 = _errs1 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.workspaceFolders !== undefined){
let data1 = data.workspaceFolders;
const _errs7 = errors;
const _errs8 = errors;
let valid2 = false;
const _errs9 = errors;
if(data1 !== null){
const err3 = {instancePath:instancePath+"/workspaceFolders",schemaPath:"#/properties/workspaceFolders/anyOf/0/type",keyword:"type",params:{type: "null"},message:"must be null"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
var _valid1 = _errs9 === errors;
valid2 = valid2 || _valid1;
if(!valid2){
const _errs11 = errors;
if(errors === _errs11){
if(Array.isArray(data1)){
var valid3 = true;
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
let data2 = data1[i0];
const _errs13 = errors;
if(errors === _errs13){
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing1;
if((data2.uri === undefined) && (missing1 = "uri")){
const err4 = {instancePath:instancePath+"/workspaceFolders/" + i0,schemaPath:"#/properties/workspaceFolders/anyOf/1/items/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
else {
if(data2.uri !== undefined){
if(typeof data2.uri !== "string"){
const err5 = {instancePath:instancePath+"/workspaceFolders/" + i0+"/uri",schemaPath:"#/properties/workspaceFolders/anyOf/1/items/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
}
}
else {
const err6 = {instancePath:instancePath+"/workspaceFolders/" + i0,schemaPath:"#/properties/workspaceFolders/anyOf/1/items/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
var valid3 = _errs13 === errors;
if(!valid3){
break;
}
}
}
else {
const err7 = {instancePath:instancePath+"/workspaceFolders",schemaPath:"#/properties/workspaceFolders/anyOf/1/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
var _valid1 = _errs11 === errors;
valid2 = valid2 || _valid1;
}
if(!valid2){
const err8 = {instancePath:instancePath+"/workspaceFolders",schemaPath:"#/properties/workspaceFolders/anyOf",keyword:"anyOf",params:{},message:"must match a schema in anyOf"};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
validate15.errors = vErrors;
return false;
}
else {
errors = _errs8;
if(vErrors !== null){
if(_errs8){
vErrors.length = _errs8;
}
else {
vErrors = null;
}
}
}
var valid0 = _errs7 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.capabilities !== undefined){
let data4 = data.capabilities;
const _errs17 = errors;
if(errors === _errs17){
if(data4 && typeof data4 == "object" && !Array.isArray(data4)){
if(data4.workspace !== undefined){
let data5 = data4.workspace;
const _errs19 = errors;
const _errs20 = errors;
let valid6 = false;
const _errs21 = errors;
if(data5 !== null){
const err9 = {instancePath:instancePath+"/capabilities/workspace",schemaPath:"#/properties/capabilities/properties/workspace/anyOf/0/type",keyword:"type",params:{type: "null"},message:"must be null"};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
var _valid2 = _errs21 === errors;
valid6 = valid6 || _valid2;
if(!valid6){
const _errs23 = errors;
if(errors === _errs23){
if(!(data5 && typeof data5 == "object" && !Array.isArray(data5))){
const err10 = {instancePath:instancePath+"/capabilities/workspace",schemaPath:"#/properties/capabilities/properties/workspace/anyOf/1/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
var _valid2 = _errs23 === errors;
valid6 = valid6 || _valid2;
}
if(!valid6){
const err11 = {instancePath:instancePath+"/capabilities/workspace",schemaPath:"#/properties/capabilities/properties/workspace/anyOf",keyword:"anyOf",params:{},message:"must match a schema in anyOf"};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
validate15.errors = vErrors;
return false;
}
else {
errors = _errs20;
if(vErrors !== null){
if(_errs20){
vErrors.length = _errs20;
}
else {
vErrors = null;
}
}
}
var valid5 = _errs19 === errors;
}
else {
var valid5 = true;
}
if(valid5){
if(data4.textDocument !== undefined){
let data6 = data4.textDocument;
const _errs25 = errors;
const _errs26 = errors;
let valid7 = false;
const _errs27 = errors;
if(data6 !== null){
const err12 = {instancePath:instancePath+"/capabilities/textDocument",schemaPath:"#/properties/capabilities/properties/textDocument/anyOf/0/type",keyword:"type",params:{type: "null"},message:"must be null"};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
var _valid3 = _errs27 === errors;
valid7 = valid7 || _valid3;
if(!valid7){
const _errs29 = errors;
if(errors === _errs29){
if(data6 && typeof data6 == "object" && !Array.isArray(data6)){
if(data6.hover !== undefined){
let data7 = data6.hover;
const _errs31 = errors;
const _errs32 = errors;
let valid9 = false;
const _errs33 = errors;
if(data7 !== null){
const err13 = {instancePath:instancePath+"/capabilities/textDocument/hover",schemaPath:"#/properties/capabilities/properties/textDocument/anyOf/1/properties/hover/anyOf/0/type",keyword:"type",params:{type: "null"},message:"must be null"};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
var _valid4 = _errs33 === errors;
valid9 = valid9 || _valid4;
if(!valid9){
const _errs35 = errors;
if(errors === _errs35){
if(data7 && typeof data7 == "object" && !Array.isArray(data7)){
if(data7.contentFormat !== undefined){
let data8 = data7.contentFormat;
const _errs38 = errors;
let valid11 = false;
const _errs39 = errors;
if(data8 !== null){
const err14 = {instancePath:instancePath+"/capabilities/textDocument/hover/contentFormat",schemaPath:"#/properties/capabilities/properties/textDocument/anyOf/1/properties/hover/anyOf/1/properties/contentFormat/anyOf/0/type",keyword:"type",params:{type: "null"},message:"must be null"};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
var _valid5 = _errs39 === errors;
valid11 = valid11 || _valid5;
if(!valid11){
const _errs41 = errors;
if(!(Array.isArray(data8))){
const err15 = {instancePath:instancePath+"/capabilities/textDocument/hover/contentFormat",schemaPath:"#/properties/capabilities/properties/textDocument/anyOf/1/properties/hover/anyOf/1/properties/contentFormat/anyOf/1/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
var _valid5 = _errs41 === errors;
valid11 = valid11 || _valid5;
}
if(!valid11){
const err16 = {instancePath:instancePath+"/capabilities/textDocument/hover/contentFormat",schemaPath:"#/properties/capabilities/properties/textDocument/anyOf/1/properties/hover/anyOf/1/properties/contentFormat/anyOf",keyword:"anyOf",params:{},message:"must match a schema in anyOf"};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
else {
errors = _errs38;
if(vErrors !== null){
if(_errs38){
vErrors.length = _errs38;
}
else {
vErrors = null;
}
}
}
}
}
else {
const err17 = {instancePath:instancePath+"/capabilities/textDocument/hover",schemaPath:"#/properties/capabilities/properties/textDocument/anyOf/1/properties/hover/anyOf/1/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
}
var _valid4 = _errs35 === errors;
valid9 = valid9 || _valid4;
}
if(!valid9){
const err18 = {instancePath:instancePath+"/capabilities/textDocument/hover",schemaPath:"#/properties/capabilities/properties/textDocument/anyOf/1/properties/hover/anyOf",keyword:"anyOf",params:{},message:"must match a schema in anyOf"};
if(vErrors === null){
vErrors = [err18];
}
else {
vErrors.push(err18);
}
errors++;
}
else {
errors = _errs32;
if(vErrors !== null){
if(_errs32){
vErrors.length = _errs32;
}
else {
vErrors = null;
}
}
}
var valid8 = _errs31 === errors;
}
else {
var valid8 = true;
}
if(valid8){
if(data6.completion !== undefined){
let data9 = data6.completion;
const _errs43 = errors;
const _errs44 = errors;
let valid12 = false;
const _errs45 = errors;
if(data9 !== null){
const err19 = {instancePath:instancePath+"/capabilities/textDocument/completion",schemaPath:"#/properties/capabilities/properties/textDocument/anyOf/1/properties/completion/anyOf/0/type",keyword:"type",params:{type: "null"},message:"must be null"};
if(vErrors === null){
vErrors = [err19];
}
else {
vErrors.push(err19);
}
errors++;
}
var _valid6 = _errs45 === errors;
valid12 = valid12 || _valid6;
if(!valid12){
const _errs47 = errors;
if(errors === _errs47){
if(!(data9 && typeof data9 == "object" && !Array.isArray(data9))){
const err20 = {instancePath:instancePath+"/capabilities/textDocument/completion",schemaPath:"#/properties/capabilities/properties/textDocument/anyOf/1/properties/completion/anyOf/1/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err20];
}
else {
vErrors.push(err20);
}
errors++;
}
}
var _valid6 = _errs47 === errors;
valid12 = valid12 || _valid6;
}
if(!valid12){
const err21 = {instancePath:instancePath+"/capabilities/textDocument/completion",schemaPath:"#/properties/capabilities/properties/textDocument/anyOf/1/properties/completion/anyOf",keyword:"anyOf",params:{},message:"must match a schema in anyOf"};
if(vErrors === null){
vErrors = [err21];
}
else {
vErrors.push(err21);
}
errors++;
}
else {
errors = _errs44;
if(vErrors !== null){
if(_errs44){
vErrors.length = _errs44;
}
else {
vErrors = null;
}
}
}
var valid8 = _errs43 === errors;
}
else {
var valid8 = true;
}
}
}
else {
const err22 = {instancePath:instancePath+"/capabilities/textDocument",schemaPath:"#/properties/capabilities/properties/textDocument/anyOf/1/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err22];
}
else {
vErrors.push(err22);
}
errors++;
}
}
var _valid3 = _errs29 === errors;
valid7 = valid7 || _valid3;
}
if(!valid7){
const err23 = {instancePath:instancePath+"/capabilities/textDocument",schemaPath:"#/properties/capabilities/properties/textDocument/anyOf",keyword:"anyOf",params:{},message:"must match a schema in anyOf"};
if(vErrors === null){
vErrors = [err23];
}
else {
vErrors.push(err23);
}
errors++;
validate15.errors = vErrors;
return false;
}
else {
errors = _errs26;
if(vErrors !== null){
if(_errs26){
vErrors.length = _errs26;
}
else {
vErrors = null;
}
}
}
var valid5 = _errs25 === errors;
}
else {
var valid5 = true;
}
}
}
else {
validate15.errors = [{instancePath:instancePath+"/capabilities",schemaPath:"#/properties/capabilities/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs17 === errors;
}
else {
var valid0 = true;
}
}
}
}
}
else {
validate15.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate15.errors = vErrors;
return errors === 0;
}

export const textDocumentDidOpen = validate16;
const schema17 = {"type":"object","properties":{"textDocument":{"type":"object","properties":{"uri":{"type":"string"},"languageId":{"type":"string"},"version":{"type":"integer"},"text":{"type":"string"}},"required":["uri","languageId","version","text"]}},"required":["textDocument"]};

function validate16(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if((data.textDocument === undefined) && (missing0 = "textDocument")){
validate16.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.textDocument !== undefined){
let data0 = data.textDocument;
const _errs1 = errors;
if(errors === _errs1){
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if(((((data0.uri === undefined) && (missing1 = "uri")) || ((data0.languageId === undefined) && (missing1 = "languageId"))) || ((data0.version === undefined) && (missing1 = "version"))) || ((data0.text === undefined) && (missing1 = "text"))){
validate16.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data0.uri !== undefined){
const _errs3 = errors;
if(typeof data0.uri !== "string"){
validate16.errors = [{instancePath:instancePath+"/textDocument/uri",schemaPath:"#/properties/textDocument/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid1 = _errs3 === errors;
}
else {
var valid1 = true;
}
if(valid1){
if(data0.languageId !== undefined){
const _errs5 = errors;
if(typeof data0.languageId !== "string"){
validate16.errors = [{instancePath:instancePath+"/textDocument/languageId",schemaPath:"#/properties/textDocument/properties/languageId/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid1 = _errs5 === errors;
}
else {
var valid1 = true;
}
if(valid1){
if(data0.version !== undefined){
let data3 = data0.version;
const _errs7 = errors;
if(!(((typeof data3 == "number") && (!(data3 % 1) && !isNaN(data3))) && (isFinite(data3)))){
validate16.errors = [{instancePath:instancePath+"/textDocument/version",schemaPath:"#/properties/textDocument/properties/version/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
var valid1 = _errs7 === errors;
}
else {
var valid1 = true;
}
if(valid1){
if(data0.text !== undefined){
const _errs9 = errors;
if(typeof data0.text !== "string"){
validate16.errors = [{instancePath:instancePath+"/textDocument/text",schemaPath:"#/properties/textDocument/properties/text/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid1 = _errs9 === errors;
}
else {
var valid1 = true;
}
}
}
}
}
}
else {
validate16.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
}
}
}
else {
validate16.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate16.errors = vErrors;
return errors === 0;
}

export const textDocumentDidChange = validate17;
const schema18 = {"type":"object","properties":{"textDocument":{"type":"object","properties":{"uri":{"type":"string"},"version":{"type":"integer"}},"required":["uri","version"]},"contentChanges":{"type":"array","items":{"type":"object","properties":{"range":{"type":"object","properties":{"start":{"type":"object","properties":{"line":{"type":"integer","minimum":0},"character":{"type":"integer","minimum":0}},"required":["line","character"]},"end":{"type":"object","properties":{"line":{"type":"integer","minimum":0},"character":{"type":"integer","minimum":0}},"required":["line","character"]}},"required":["start","end"]},"text":{"type":"string"}},"required":["text"]}}},"required":["textDocument","contentChanges"]};

function validate17(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if(((data.textDocument === undefined) && (missing0 = "textDocument")) || ((data.contentChanges === undefined) && (missing0 = "contentChanges"))){
validate17.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.textDocument !== undefined){
let data0 = data.textDocument;
const _errs1 = errors;
if(errors === _errs1){
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if(((data0.uri === undefined) && (missing1 = "uri")) || ((data0.version === undefined) && (missing1 = "version"))){
validate17.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data0.uri !== undefined){
const _errs3 = errors;
if(typeof data0.uri !== "string"){
validate17.errors = [{instancePath:instancePath+"/textDocument/uri",schemaPath:"#/properties/textDocument/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid1 = _errs3 === errors;
}
else {
var valid1 = true;
}
if(valid1){
if(data0.version !== undefined){
let data2 = data0.version;
const _errs5 = errors;
if(!(((typeof data2 == "number") && (!(data2 % 1) && !isNaN(data2))) && (isFinite(data2)))){
validate17.errors = [{instancePath:instancePath+"/textDocument/version",schemaPath:"#/properties/textDocument/properties/version/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
var valid1 = _errs5 === errors;
}
else {
var valid1 = true;
}
}
}
}
else {
validate17.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs1 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.contentChanges !== undefined){
let data3 = data.contentChanges;
const _errs7 = errors;
if(errors === _errs7){
if(Array.isArray(data3)){
var valid2 = true;
const len0 = data3.length;
for(let i0=0; i0<len0; i0++){
let data4 = data3[i0];
const _errs9 = errors;
if(errors === _errs9){
if(data4 && typeof data4 == "object" && !Array.isArray(data4)){
let missing2;
if((data4.text === undefined) && (missing2 = "text")){
validate17.errors = [{instancePath:instancePath+"/contentChanges/" + i0,schemaPath:"#/properties/contentChanges/items/required",keyword:"required",params:{missingProperty: missing2},message:"must have required property '"+missing2+"'"}];
return false;
}
else {
if(data4.range !== undefined){
let data5 = data4.range;
const _errs11 = errors;
if(errors === _errs11){
if(data5 && typeof data5 == "object" && !Array.isArray(data5)){
let missing3;
if(((data5.start === undefined) && (missing3 = "start")) || ((data5.end === undefined) && (missing3 = "end"))){
validate17.errors = [{instancePath:instancePath+"/contentChanges/" + i0+"/range",schemaPath:"#/properties/contentChanges/items/properties/range/required",keyword:"required",params:{missingProperty: missing3},message:"must have required property '"+missing3+"'"}];
return false;
}
else {
if(data5.start !== undefined){
let data6 = data5.start;
const _errs13 = errors;
if(errors === _errs13){
if(data6 && typeof data6 == "object" && !Array.isArray(data6)){
let missing4;
if(((data6.line === undefined) && (missing4 = "line")) || ((data6.character === undefined) && (missing4 = "character"))){
validate17.errors = [{instancePath:instancePath+"/contentChanges/" + i0+"/range/start",schemaPath:"#/properties/contentChanges/items/properties/range/properties/start/required",keyword:"required",params:{missingProperty: missing4},message:"must have required property '"+missing4+"'"}];
return false;
}
else {
if(data6.line !== undefined){
let data7 = data6.line;
const _errs15 = errors;
if(!(((typeof data7 == "number") && (!(data7 % 1) && !isNaN(data7))) && (isFinite(data7)))){
validate17.errors = [{instancePath:instancePath+"/contentChanges/" + i0+"/range/start/line",schemaPath:"#/properties/contentChanges/items/properties/range/properties/start/properties/line/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs15){
if((typeof data7 == "number") && (isFinite(data7))){
if(data7 < 0 || isNaN(data7)){
validate17.errors = [{instancePath:instancePath+"/contentChanges/" + i0+"/range/start/line",schemaPath:"#/properties/contentChanges/items/properties/range/properties/start/properties/line/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid5 = _errs15 === errors;
}
else {
var valid5 = true;
}
if(valid5){
if(data6.character !== undefined){
let data8 = data6.character;
const _errs17 = errors;
if(!(((typeof data8 == "number") && (!(data8 % 1) && !isNaN(data8))) && (isFinite(data8)))){
validate17.errors = [{instancePath:instancePath+"/contentChanges/" + i0+"/range/start/character",schemaPath:"#/properties/contentChanges/items/properties/range/properties/start/properties/character/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs17){
if((typeof data8 == "number") && (isFinite(data8))){
if(data8 < 0 || isNaN(data8)){
validate17.errors = [{instancePath:instancePath+"/contentChanges/" + i0+"/range/start/character",schemaPath:"#/properties/contentChanges/items/properties/range/properties/start/properties/character/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid5 = _errs17 === errors;
}
else {
var valid5 = true;
}
}
}
}
else {
validate17.errors = [{instancePath:instancePath+"/contentChanges/" + i0+"/range/start",schemaPath:"#/properties/contentChanges/items/properties/range/properties/start/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid4 = _errs13 === errors;
}
else {
var valid4 = true;
}
if(valid4){
if(data5.end !== undefined){
let data9 = data5.end;
const _errs19 = errors;
if(errors === _errs19){
if(data9 && typeof data9 == "object" && !Array.isArray(data9)){
let missing5;
if(((data9.line === undefined) && (missing5 = "line")) || ((data9.character === undefined) && (missing5 = "character"))){
validate17.errors = [{instancePath:instancePath+"/contentChanges/" + i0+"/range/end",schemaPath:"#/properties/contentChanges/items/properties/range/properties/end/required",keyword:"required",params:{missingProperty: missing5},message:"must have required property '"+missing5+"'"}];
return false;
}
else {
if(data9.line !== undefined){
let data10 = data9.line;
const _errs21 = errors;
if(!(((typeof data10 == "number") && (!(data10 % 1) && !isNaN(data10))) && (isFinite(data10)))){
validate17.errors = [{instancePath:instancePath+"/contentChanges/" + i0+"/range/end/line",schemaPath:"#/properties/contentChanges/items/properties/range/properties/end/properties/line/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs21){
if((typeof data10 == "number") && (isFinite(data10))){
if(data10 < 0 || isNaN(data10)){
validate17.errors = [{instancePath:instancePath+"/contentChanges/" + i0+"/range/end/line",schemaPath:"#/properties/contentChanges/items/properties/range/properties/end/properties/line/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid6 = _errs21 === errors;
}
else {
var valid6 = true;
}
if(valid6){
if(data9.character !== undefined){
let data11 = data9.character;
const _errs23 = errors;
if(!(((typeof data11 == "number") && (!(data11 % 1) && !isNaN(data11))) && (isFinite(data11)))){
validate17.errors = [{instancePath:instancePath+"/contentChanges/" + i0+"/range/end/character",schemaPath:"#/properties/contentChanges/items/properties/range/properties/end/properties/character/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs23){
if((typeof data11 == "number") && (isFinite(data11))){
if(data11 < 0 || isNaN(data11)){
validate17.errors = [{instancePath:instancePath+"/contentChanges/" + i0+"/range/end/character",schemaPath:"#/properties/contentChanges/items/properties/range/properties/end/properties/character/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid6 = _errs23 === errors;
}
else {
var valid6 = true;
}
}
}
}
else {
validate17.errors = [{instancePath:instancePath+"/contentChanges/" + i0+"/range/end",schemaPath:"#/properties/contentChanges/items/properties/range/properties/end/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid4 = _errs19 === errors;
}
else {
var valid4 = true;
}
}
}
}
else {
validate17.errors = [{instancePath:instancePath+"/contentChanges/" + i0+"/range",schemaPath:"#/properties/contentChanges/items/properties/range/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid3 = _errs11 === errors;
}
else {
var valid3 = true;
}
if(valid3){
if(data4.text !== undefined){
const _errs25 = errors;
if(typeof data4.text !== "string"){
validate17.errors = [{instancePath:instancePath+"/contentChanges/" + i0+"/text",schemaPath:"#/properties/contentChanges/items/properties/text/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid3 = _errs25 === errors;
}
else {
var valid3 = true;
}
}
}
}
else {
validate17.errors = [{instancePath:instancePath+"/contentChanges/" + i0,schemaPath:"#/properties/contentChanges/items/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid2 = _errs9 === errors;
if(!valid2){
break;
}
}
}
else {
validate17.errors = [{instancePath:instancePath+"/contentChanges",schemaPath:"#/properties/contentChanges/type",keyword:"type",params:{type: "array"},message:"must be array"}];
return false;
}
}
var valid0 = _errs7 === errors;
}
else {
var valid0 = true;
}
}
}
}
else {
validate17.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate17.errors = vErrors;
return errors === 0;
}

export const textDocumentDidClose = validate18;
const schema19 = {"type":"object","properties":{"textDocument":{"type":"object","properties":{"uri":{"type":"string"}},"required":["uri"]}},"required":["textDocument"]};

function validate18(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if((data.textDocument === undefined) && (missing0 = "textDocument")){
validate18.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.textDocument !== undefined){
let data0 = data.textDocument;
const _errs1 = errors;
if(errors === _errs1){
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if((data0.uri === undefined) && (missing1 = "uri")){
validate18.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data0.uri !== undefined){
if(typeof data0.uri !== "string"){
validate18.errors = [{instancePath:instancePath+"/textDocument/uri",schemaPath:"#/properties/textDocument/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate18.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
}
}
}
else {
validate18.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate18.errors = vErrors;
return errors === 0;
}

export const textDocumentWillSave = validate19;
const schema20 = {"type":"object","properties":{"textDocument":{"type":"object","properties":{"uri":{"type":"string"}},"required":["uri"]},"reason":{"type":"integer"}},"required":["textDocument","reason"]};

function validate19(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if(((data.textDocument === undefined) && (missing0 = "textDocument")) || ((data.reason === undefined) && (missing0 = "reason"))){
validate19.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.textDocument !== undefined){
let data0 = data.textDocument;
const _errs1 = errors;
if(errors === _errs1){
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if((data0.uri === undefined) && (missing1 = "uri")){
validate19.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data0.uri !== undefined){
if(typeof data0.uri !== "string"){
validate19.errors = [{instancePath:instancePath+"/textDocument/uri",schemaPath:"#/properties/textDocument/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate19.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs1 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.reason !== undefined){
let data2 = data.reason;
const _errs5 = errors;
if(!(((typeof data2 == "number") && (!(data2 % 1) && !isNaN(data2))) && (isFinite(data2)))){
validate19.errors = [{instancePath:instancePath+"/reason",schemaPath:"#/properties/reason/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
var valid0 = _errs5 === errors;
}
else {
var valid0 = true;
}
}
}
}
else {
validate19.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate19.errors = vErrors;
return errors === 0;
}

export const textDocumentDidSave = validate20;
const schema21 = {"type":"object","properties":{"textDocument":{"type":"object","properties":{"uri":{"type":"string"}},"required":["uri"]}},"required":["textDocument"]};

function validate20(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if((data.textDocument === undefined) && (missing0 = "textDocument")){
validate20.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.textDocument !== undefined){
let data0 = data.textDocument;
const _errs1 = errors;
if(errors === _errs1){
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if((data0.uri === undefined) && (missing1 = "uri")){
validate20.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data0.uri !== undefined){
if(typeof data0.uri !== "string"){
validate20.errors = [{instancePath:instancePath+"/textDocument/uri",schemaPath:"#/properties/textDocument/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate20.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
}
}
}
else {
validate20.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate20.errors = vErrors;
return errors === 0;
}

export const workspaceDidChangeWatchedFiles = validate21;
const schema22 = {"type":"object","properties":{"changes":{"type":"array","items":{"type":"object","properties":{"uri":{"type":"string"},"type":{"type":"integer"}},"required":["uri","type"]}}},"required":["changes"]};

function validate21(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if((data.changes === undefined) && (missing0 = "changes")){
validate21.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.changes !== undefined){
let data0 = data.changes;
const _errs1 = errors;
if(errors === _errs1){
if(Array.isArray(data0)){
var valid1 = true;
const len0 = data0.length;
for(let i0=0; i0<len0; i0++){
let data1 = data0[i0];
const _errs3 = errors;
if(errors === _errs3){
if(data1 && typeof data1 == "object" && !Array.isArray(data1)){
let missing1;
if(((data1.uri === undefined) && (missing1 = "uri")) || ((data1.type === undefined) && (missing1 = "type"))){
validate21.errors = [{instancePath:instancePath+"/changes/" + i0,schemaPath:"#/properties/changes/items/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data1.uri !== undefined){
const _errs5 = errors;
if(typeof data1.uri !== "string"){
validate21.errors = [{instancePath:instancePath+"/changes/" + i0+"/uri",schemaPath:"#/properties/changes/items/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid2 = _errs5 === errors;
}
else {
var valid2 = true;
}
if(valid2){
if(data1.type !== undefined){
let data3 = data1.type;
const _errs7 = errors;
if(!(((typeof data3 == "number") && (!(data3 % 1) && !isNaN(data3))) && (isFinite(data3)))){
validate21.errors = [{instancePath:instancePath+"/changes/" + i0+"/type",schemaPath:"#/properties/changes/items/properties/type/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
var valid2 = _errs7 === errors;
}
else {
var valid2 = true;
}
}
}
}
else {
validate21.errors = [{instancePath:instancePath+"/changes/" + i0,schemaPath:"#/properties/changes/items/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid1 = _errs3 === errors;
if(!valid1){
break;
}
}
}
else {
validate21.errors = [{instancePath:instancePath+"/changes",schemaPath:"#/properties/changes/type",keyword:"type",params:{type: "array"},message:"must be array"}];
return false;
}
}
}
}
}
else {
validate21.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate21.errors = vErrors;
return errors === 0;
}

export const workspaceDidChangeConfiguration = validate22;
const schema23 = {"type":"object","properties":{},"required":[]};

function validate22(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(!(data && typeof data == "object" && !Array.isArray(data))){
validate22.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate22.errors = vErrors;
return errors === 0;
}

export const workspaceDidChangeWorkspaceFolders = validate23;
const schema24 = {"type":"object","properties":{"event":{"type":"object","properties":{"added":{"type":"array","items":{"type":"object","properties":{"uri":{"type":"string"}},"required":["uri"]}},"removed":{"type":"array","items":{"type":"object","properties":{"uri":{"type":"string"}},"required":["uri"]}}},"required":["added","removed"]}},"required":["event"]};

function validate23(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if((data.event === undefined) && (missing0 = "event")){
validate23.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.event !== undefined){
let data0 = data.event;
const _errs1 = errors;
if(errors === _errs1){
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if(((data0.added === undefined) && (missing1 = "added")) || ((data0.removed === undefined) && (missing1 = "removed"))){
validate23.errors = [{instancePath:instancePath+"/event",schemaPath:"#/properties/event/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data0.added !== undefined){
let data1 = data0.added;
const _errs3 = errors;
if(errors === _errs3){
if(Array.isArray(data1)){
var valid2 = true;
const len0 = data1.length;
for(let i0=0; i0<len0; i0++){
let data2 = data1[i0];
const _errs5 = errors;
if(errors === _errs5){
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing2;
if((data2.uri === undefined) && (missing2 = "uri")){
validate23.errors = [{instancePath:instancePath+"/event/added/" + i0,schemaPath:"#/properties/event/properties/added/items/required",keyword:"required",params:{missingProperty: missing2},message:"must have required property '"+missing2+"'"}];
return false;
}
else {
if(data2.uri !== undefined){
if(typeof data2.uri !== "string"){
validate23.errors = [{instancePath:instancePath+"/event/added/" + i0+"/uri",schemaPath:"#/properties/event/properties/added/items/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate23.errors = [{instancePath:instancePath+"/event/added/" + i0,schemaPath:"#/properties/event/properties/added/items/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid2 = _errs5 === errors;
if(!valid2){
break;
}
}
}
else {
validate23.errors = [{instancePath:instancePath+"/event/added",schemaPath:"#/properties/event/properties/added/type",keyword:"type",params:{type: "array"},message:"must be array"}];
return false;
}
}
var valid1 = _errs3 === errors;
}
else {
var valid1 = true;
}
if(valid1){
if(data0.removed !== undefined){
let data4 = data0.removed;
const _errs9 = errors;
if(errors === _errs9){
if(Array.isArray(data4)){
var valid4 = true;
const len1 = data4.length;
for(let i1=0; i1<len1; i1++){
let data5 = data4[i1];
const _errs11 = errors;
if(errors === _errs11){
if(data5 && typeof data5 == "object" && !Array.isArray(data5)){
let missing3;
if((data5.uri === undefined) && (missing3 = "uri")){
validate23.errors = [{instancePath:instancePath+"/event/removed/" + i1,schemaPath:"#/properties/event/properties/removed/items/required",keyword:"required",params:{missingProperty: missing3},message:"must have required property '"+missing3+"'"}];
return false;
}
else {
if(data5.uri !== undefined){
if(typeof data5.uri !== "string"){
validate23.errors = [{instancePath:instancePath+"/event/removed/" + i1+"/uri",schemaPath:"#/properties/event/properties/removed/items/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate23.errors = [{instancePath:instancePath+"/event/removed/" + i1,schemaPath:"#/properties/event/properties/removed/items/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid4 = _errs11 === errors;
if(!valid4){
break;
}
}
}
else {
validate23.errors = [{instancePath:instancePath+"/event/removed",schemaPath:"#/properties/event/properties/removed/type",keyword:"type",params:{type: "array"},message:"must be array"}];
return false;
}
}
var valid1 = _errs9 === errors;
}
else {
var valid1 = true;
}
}
}
}
else {
validate23.errors = [{instancePath:instancePath+"/event",schemaPath:"#/properties/event/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
}
}
}
else {
validate23.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate23.errors = vErrors;
return errors === 0;
}

export const CancelRequest = validate24;
const schema25 = {"type":"object","properties":{"id":{"type":["string","integer"]}},"required":["id"]};

function validate24(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if((data.id === undefined) && (missing0 = "id")){
validate24.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.id !== undefined){
let data0 = data.id;
if((typeof data0 !== "string") && (!(((typeof data0 == "number") && (!(data0 % 1) && !isNaN(data0))) && (isFinite(data0))))){
validate24.errors = [{instancePath:instancePath+"/id",schemaPath:"#/properties/id/type",keyword:"type",params:{type: schema25.properties.id.type},message:"must be string,integer"}];
return false;
}
}
}
}
else {
validate24.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate24.errors = vErrors;
return errors === 0;
}

export const SetTrace = validate25;
const schema26 = {"type":"object","properties":{"value":{"type":"string"}},"required":["value"]};

function validate25(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if((data.value === undefined) && (missing0 = "value")){
validate25.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.value !== undefined){
if(typeof data.value !== "string"){
validate25.errors = [{instancePath:instancePath+"/value",schemaPath:"#/properties/value/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate25.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate25.errors = vErrors;
return errors === 0;
}

export const windowWorkDoneProgressCancel = validate26;
const schema27 = {"type":"object","properties":{"token":{"type":["string","integer"]}},"required":["token"]};

function validate26(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if((data.token === undefined) && (missing0 = "token")){
validate26.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.token !== undefined){
let data0 = data.token;
if((typeof data0 !== "string") && (!(((typeof data0 == "number") && (!(data0 % 1) && !isNaN(data0))) && (isFinite(data0))))){
validate26.errors = [{instancePath:instancePath+"/token",schemaPath:"#/properties/token/type",keyword:"type",params:{type: schema27.properties.token.type},message:"must be string,integer"}];
return false;
}
}
}
}
else {
validate26.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate26.errors = vErrors;
return errors === 0;
}

export const textDocumentHover = validate27;
const schema28 = {"type":"object","properties":{"textDocument":{"type":"object","properties":{"uri":{"type":"string"}},"required":["uri"]},"position":{"type":"object","properties":{"line":{"type":"integer","minimum":0},"character":{"type":"integer","minimum":0}},"required":["line","character"]}},"required":["textDocument","position"]};

function validate27(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if(((data.textDocument === undefined) && (missing0 = "textDocument")) || ((data.position === undefined) && (missing0 = "position"))){
validate27.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.textDocument !== undefined){
let data0 = data.textDocument;
const _errs1 = errors;
if(errors === _errs1){
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if((data0.uri === undefined) && (missing1 = "uri")){
validate27.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data0.uri !== undefined){
if(typeof data0.uri !== "string"){
validate27.errors = [{instancePath:instancePath+"/textDocument/uri",schemaPath:"#/properties/textDocument/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate27.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs1 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.position !== undefined){
let data2 = data.position;
const _errs5 = errors;
if(errors === _errs5){
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing2;
if(((data2.line === undefined) && (missing2 = "line")) || ((data2.character === undefined) && (missing2 = "character"))){
validate27.errors = [{instancePath:instancePath+"/position",schemaPath:"#/properties/position/required",keyword:"required",params:{missingProperty: missing2},message:"must have required property '"+missing2+"'"}];
return false;
}
else {
if(data2.line !== undefined){
let data3 = data2.line;
const _errs7 = errors;
if(!(((typeof data3 == "number") && (!(data3 % 1) && !isNaN(data3))) && (isFinite(data3)))){
validate27.errors = [{instancePath:instancePath+"/position/line",schemaPath:"#/properties/position/properties/line/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs7){
if((typeof data3 == "number") && (isFinite(data3))){
if(data3 < 0 || isNaN(data3)){
validate27.errors = [{instancePath:instancePath+"/position/line",schemaPath:"#/properties/position/properties/line/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid2 = _errs7 === errors;
}
else {
var valid2 = true;
}
if(valid2){
if(data2.character !== undefined){
let data4 = data2.character;
const _errs9 = errors;
if(!(((typeof data4 == "number") && (!(data4 % 1) && !isNaN(data4))) && (isFinite(data4)))){
validate27.errors = [{instancePath:instancePath+"/position/character",schemaPath:"#/properties/position/properties/character/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs9){
if((typeof data4 == "number") && (isFinite(data4))){
if(data4 < 0 || isNaN(data4)){
validate27.errors = [{instancePath:instancePath+"/position/character",schemaPath:"#/properties/position/properties/character/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid2 = _errs9 === errors;
}
else {
var valid2 = true;
}
}
}
}
else {
validate27.errors = [{instancePath:instancePath+"/position",schemaPath:"#/properties/position/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs5 === errors;
}
else {
var valid0 = true;
}
}
}
}
else {
validate27.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate27.errors = vErrors;
return errors === 0;
}

export const textDocumentDefinition = validate28;
const schema29 = {"type":"object","properties":{"textDocument":{"type":"object","properties":{"uri":{"type":"string"}},"required":["uri"]},"position":{"type":"object","properties":{"line":{"type":"integer","minimum":0},"character":{"type":"integer","minimum":0}},"required":["line","character"]}},"required":["textDocument","position"]};

function validate28(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if(((data.textDocument === undefined) && (missing0 = "textDocument")) || ((data.position === undefined) && (missing0 = "position"))){
validate28.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.textDocument !== undefined){
let data0 = data.textDocument;
const _errs1 = errors;
if(errors === _errs1){
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if((data0.uri === undefined) && (missing1 = "uri")){
validate28.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data0.uri !== undefined){
if(typeof data0.uri !== "string"){
validate28.errors = [{instancePath:instancePath+"/textDocument/uri",schemaPath:"#/properties/textDocument/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate28.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs1 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.position !== undefined){
let data2 = data.position;
const _errs5 = errors;
if(errors === _errs5){
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing2;
if(((data2.line === undefined) && (missing2 = "line")) || ((data2.character === undefined) && (missing2 = "character"))){
validate28.errors = [{instancePath:instancePath+"/position",schemaPath:"#/properties/position/required",keyword:"required",params:{missingProperty: missing2},message:"must have required property '"+missing2+"'"}];
return false;
}
else {
if(data2.line !== undefined){
let data3 = data2.line;
const _errs7 = errors;
if(!(((typeof data3 == "number") && (!(data3 % 1) && !isNaN(data3))) && (isFinite(data3)))){
validate28.errors = [{instancePath:instancePath+"/position/line",schemaPath:"#/properties/position/properties/line/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs7){
if((typeof data3 == "number") && (isFinite(data3))){
if(data3 < 0 || isNaN(data3)){
validate28.errors = [{instancePath:instancePath+"/position/line",schemaPath:"#/properties/position/properties/line/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid2 = _errs7 === errors;
}
else {
var valid2 = true;
}
if(valid2){
if(data2.character !== undefined){
let data4 = data2.character;
const _errs9 = errors;
if(!(((typeof data4 == "number") && (!(data4 % 1) && !isNaN(data4))) && (isFinite(data4)))){
validate28.errors = [{instancePath:instancePath+"/position/character",schemaPath:"#/properties/position/properties/character/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs9){
if((typeof data4 == "number") && (isFinite(data4))){
if(data4 < 0 || isNaN(data4)){
validate28.errors = [{instancePath:instancePath+"/position/character",schemaPath:"#/properties/position/properties/character/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid2 = _errs9 === errors;
}
else {
var valid2 = true;
}
}
}
}
else {
validate28.errors = [{instancePath:instancePath+"/position",schemaPath:"#/properties/position/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs5 === errors;
}
else {
var valid0 = true;
}
}
}
}
else {
validate28.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate28.errors = vErrors;
return errors === 0;
}

export const textDocumentReferences = validate29;
const schema30 = {"type":"object","properties":{"textDocument":{"type":"object","properties":{"uri":{"type":"string"}},"required":["uri"]},"position":{"type":"object","properties":{"line":{"type":"integer","minimum":0},"character":{"type":"integer","minimum":0}},"required":["line","character"]},"context":{"type":"object","properties":{"includeDeclaration":{"type":"boolean"}},"required":["includeDeclaration"]}},"required":["textDocument","position","context"]};

function validate29(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if((((data.textDocument === undefined) && (missing0 = "textDocument")) || ((data.position === undefined) && (missing0 = "position"))) || ((data.context === undefined) && (missing0 = "context"))){
validate29.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.textDocument !== undefined){
let data0 = data.textDocument;
const _errs1 = errors;
if(errors === _errs1){
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if((data0.uri === undefined) && (missing1 = "uri")){
validate29.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data0.uri !== undefined){
if(typeof data0.uri !== "string"){
validate29.errors = [{instancePath:instancePath+"/textDocument/uri",schemaPath:"#/properties/textDocument/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate29.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs1 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.position !== undefined){
let data2 = data.position;
const _errs5 = errors;
if(errors === _errs5){
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing2;
if(((data2.line === undefined) && (missing2 = "line")) || ((data2.character === undefined) && (missing2 = "character"))){
validate29.errors = [{instancePath:instancePath+"/position",schemaPath:"#/properties/position/required",keyword:"required",params:{missingProperty: missing2},message:"must have required property '"+missing2+"'"}];
return false;
}
else {
if(data2.line !== undefined){
let data3 = data2.line;
const _errs7 = errors;
if(!(((typeof data3 == "number") && (!(data3 % 1) && !isNaN(data3))) && (isFinite(data3)))){
validate29.errors = [{instancePath:instancePath+"/position/line",schemaPath:"#/properties/position/properties/line/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs7){
if((typeof data3 == "number") && (isFinite(data3))){
if(data3 < 0 || isNaN(data3)){
validate29.errors = [{instancePath:instancePath+"/position/line",schemaPath:"#/properties/position/properties/line/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid2 = _errs7 === errors;
}
else {
var valid2 = true;
}
if(valid2){
if(data2.character !== undefined){
let data4 = data2.character;
const _errs9 = errors;
if(!(((typeof data4 == "number") && (!(data4 % 1) && !isNaN(data4))) && (isFinite(data4)))){
validate29.errors = [{instancePath:instancePath+"/position/character",schemaPath:"#/properties/position/properties/character/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs9){
if((typeof data4 == "number") && (isFinite(data4))){
if(data4 < 0 || isNaN(data4)){
validate29.errors = [{instancePath:instancePath+"/position/character",schemaPath:"#/properties/position/properties/character/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid2 = _errs9 === errors;
}
else {
var valid2 = true;
}
}
}
}
else {
validate29.errors = [{instancePath:instancePath+"/position",schemaPath:"#/properties/position/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs5 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.context !== undefined){
let data5 = data.context;
const _errs11 = errors;
if(errors === _errs11){
if(data5 && typeof data5 == "object" && !Array.isArray(data5)){
let missing3;
if((data5.includeDeclaration === undefined) && (missing3 = "includeDeclaration")){
validate29.errors = [{instancePath:instancePath+"/context",schemaPath:"#/properties/context/required",keyword:"required",params:{missingProperty: missing3},message:"must have required property '"+missing3+"'"}];
return false;
}
else {
if(data5.includeDeclaration !== undefined){
if(typeof data5.includeDeclaration !== "boolean"){
validate29.errors = [{instancePath:instancePath+"/context/includeDeclaration",schemaPath:"#/properties/context/properties/includeDeclaration/type",keyword:"type",params:{type: "boolean"},message:"must be boolean"}];
return false;
}
}
}
}
else {
validate29.errors = [{instancePath:instancePath+"/context",schemaPath:"#/properties/context/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs11 === errors;
}
else {
var valid0 = true;
}
}
}
}
}
else {
validate29.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate29.errors = vErrors;
return errors === 0;
}

export const textDocumentDocumentHighlight = validate30;
const schema31 = {"type":"object","properties":{"textDocument":{"type":"object","properties":{"uri":{"type":"string"}},"required":["uri"]},"position":{"type":"object","properties":{"line":{"type":"integer","minimum":0},"character":{"type":"integer","minimum":0}},"required":["line","character"]}},"required":["textDocument","position"]};

function validate30(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if(((data.textDocument === undefined) && (missing0 = "textDocument")) || ((data.position === undefined) && (missing0 = "position"))){
validate30.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.textDocument !== undefined){
let data0 = data.textDocument;
const _errs1 = errors;
if(errors === _errs1){
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if((data0.uri === undefined) && (missing1 = "uri")){
validate30.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data0.uri !== undefined){
if(typeof data0.uri !== "string"){
validate30.errors = [{instancePath:instancePath+"/textDocument/uri",schemaPath:"#/properties/textDocument/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate30.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs1 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.position !== undefined){
let data2 = data.position;
const _errs5 = errors;
if(errors === _errs5){
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing2;
if(((data2.line === undefined) && (missing2 = "line")) || ((data2.character === undefined) && (missing2 = "character"))){
validate30.errors = [{instancePath:instancePath+"/position",schemaPath:"#/properties/position/required",keyword:"required",params:{missingProperty: missing2},message:"must have required property '"+missing2+"'"}];
return false;
}
else {
if(data2.line !== undefined){
let data3 = data2.line;
const _errs7 = errors;
if(!(((typeof data3 == "number") && (!(data3 % 1) && !isNaN(data3))) && (isFinite(data3)))){
validate30.errors = [{instancePath:instancePath+"/position/line",schemaPath:"#/properties/position/properties/line/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs7){
if((typeof data3 == "number") && (isFinite(data3))){
if(data3 < 0 || isNaN(data3)){
validate30.errors = [{instancePath:instancePath+"/position/line",schemaPath:"#/properties/position/properties/line/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid2 = _errs7 === errors;
}
else {
var valid2 = true;
}
if(valid2){
if(data2.character !== undefined){
let data4 = data2.character;
const _errs9 = errors;
if(!(((typeof data4 == "number") && (!(data4 % 1) && !isNaN(data4))) && (isFinite(data4)))){
validate30.errors = [{instancePath:instancePath+"/position/character",schemaPath:"#/properties/position/properties/character/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs9){
if((typeof data4 == "number") && (isFinite(data4))){
if(data4 < 0 || isNaN(data4)){
validate30.errors = [{instancePath:instancePath+"/position/character",schemaPath:"#/properties/position/properties/character/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid2 = _errs9 === errors;
}
else {
var valid2 = true;
}
}
}
}
else {
validate30.errors = [{instancePath:instancePath+"/position",schemaPath:"#/properties/position/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs5 === errors;
}
else {
var valid0 = true;
}
}
}
}
else {
validate30.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate30.errors = vErrors;
return errors === 0;
}

export const textDocumentPrepareRename = validate31;
const schema32 = {"type":"object","properties":{"textDocument":{"type":"object","properties":{"uri":{"type":"string"}},"required":["uri"]},"position":{"type":"object","properties":{"line":{"type":"integer","minimum":0},"character":{"type":"integer","minimum":0}},"required":["line","character"]}},"required":["textDocument","position"]};

function validate31(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if(((data.textDocument === undefined) && (missing0 = "textDocument")) || ((data.position === undefined) && (missing0 = "position"))){
validate31.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.textDocument !== undefined){
let data0 = data.textDocument;
const _errs1 = errors;
if(errors === _errs1){
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if((data0.uri === undefined) && (missing1 = "uri")){
validate31.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data0.uri !== undefined){
if(typeof data0.uri !== "string"){
validate31.errors = [{instancePath:instancePath+"/textDocument/uri",schemaPath:"#/properties/textDocument/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate31.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs1 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.position !== undefined){
let data2 = data.position;
const _errs5 = errors;
if(errors === _errs5){
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing2;
if(((data2.line === undefined) && (missing2 = "line")) || ((data2.character === undefined) && (missing2 = "character"))){
validate31.errors = [{instancePath:instancePath+"/position",schemaPath:"#/properties/position/required",keyword:"required",params:{missingProperty: missing2},message:"must have required property '"+missing2+"'"}];
return false;
}
else {
if(data2.line !== undefined){
let data3 = data2.line;
const _errs7 = errors;
if(!(((typeof data3 == "number") && (!(data3 % 1) && !isNaN(data3))) && (isFinite(data3)))){
validate31.errors = [{instancePath:instancePath+"/position/line",schemaPath:"#/properties/position/properties/line/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs7){
if((typeof data3 == "number") && (isFinite(data3))){
if(data3 < 0 || isNaN(data3)){
validate31.errors = [{instancePath:instancePath+"/position/line",schemaPath:"#/properties/position/properties/line/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid2 = _errs7 === errors;
}
else {
var valid2 = true;
}
if(valid2){
if(data2.character !== undefined){
let data4 = data2.character;
const _errs9 = errors;
if(!(((typeof data4 == "number") && (!(data4 % 1) && !isNaN(data4))) && (isFinite(data4)))){
validate31.errors = [{instancePath:instancePath+"/position/character",schemaPath:"#/properties/position/properties/character/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs9){
if((typeof data4 == "number") && (isFinite(data4))){
if(data4 < 0 || isNaN(data4)){
validate31.errors = [{instancePath:instancePath+"/position/character",schemaPath:"#/properties/position/properties/character/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid2 = _errs9 === errors;
}
else {
var valid2 = true;
}
}
}
}
else {
validate31.errors = [{instancePath:instancePath+"/position",schemaPath:"#/properties/position/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs5 === errors;
}
else {
var valid0 = true;
}
}
}
}
else {
validate31.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate31.errors = vErrors;
return errors === 0;
}

export const textDocumentRename = validate32;
const schema33 = {"type":"object","properties":{"textDocument":{"type":"object","properties":{"uri":{"type":"string"}},"required":["uri"]},"position":{"type":"object","properties":{"line":{"type":"integer","minimum":0},"character":{"type":"integer","minimum":0}},"required":["line","character"]},"newName":{"type":"string"}},"required":["textDocument","position","newName"]};

function validate32(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if((((data.textDocument === undefined) && (missing0 = "textDocument")) || ((data.position === undefined) && (missing0 = "position"))) || ((data.newName === undefined) && (missing0 = "newName"))){
validate32.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.textDocument !== undefined){
let data0 = data.textDocument;
const _errs1 = errors;
if(errors === _errs1){
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if((data0.uri === undefined) && (missing1 = "uri")){
validate32.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data0.uri !== undefined){
if(typeof data0.uri !== "string"){
validate32.errors = [{instancePath:instancePath+"/textDocument/uri",schemaPath:"#/properties/textDocument/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate32.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs1 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.position !== undefined){
let data2 = data.position;
const _errs5 = errors;
if(errors === _errs5){
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing2;
if(((data2.line === undefined) && (missing2 = "line")) || ((data2.character === undefined) && (missing2 = "character"))){
validate32.errors = [{instancePath:instancePath+"/position",schemaPath:"#/properties/position/required",keyword:"required",params:{missingProperty: missing2},message:"must have required property '"+missing2+"'"}];
return false;
}
else {
if(data2.line !== undefined){
let data3 = data2.line;
const _errs7 = errors;
if(!(((typeof data3 == "number") && (!(data3 % 1) && !isNaN(data3))) && (isFinite(data3)))){
validate32.errors = [{instancePath:instancePath+"/position/line",schemaPath:"#/properties/position/properties/line/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs7){
if((typeof data3 == "number") && (isFinite(data3))){
if(data3 < 0 || isNaN(data3)){
validate32.errors = [{instancePath:instancePath+"/position/line",schemaPath:"#/properties/position/properties/line/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid2 = _errs7 === errors;
}
else {
var valid2 = true;
}
if(valid2){
if(data2.character !== undefined){
let data4 = data2.character;
const _errs9 = errors;
if(!(((typeof data4 == "number") && (!(data4 % 1) && !isNaN(data4))) && (isFinite(data4)))){
validate32.errors = [{instancePath:instancePath+"/position/character",schemaPath:"#/properties/position/properties/character/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs9){
if((typeof data4 == "number") && (isFinite(data4))){
if(data4 < 0 || isNaN(data4)){
validate32.errors = [{instancePath:instancePath+"/position/character",schemaPath:"#/properties/position/properties/character/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid2 = _errs9 === errors;
}
else {
var valid2 = true;
}
}
}
}
else {
validate32.errors = [{instancePath:instancePath+"/position",schemaPath:"#/properties/position/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs5 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.newName !== undefined){
const _errs11 = errors;
if(typeof data.newName !== "string"){
validate32.errors = [{instancePath:instancePath+"/newName",schemaPath:"#/properties/newName/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid0 = _errs11 === errors;
}
else {
var valid0 = true;
}
}
}
}
}
else {
validate32.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate32.errors = vErrors;
return errors === 0;
}

export const textDocumentFoldingRange = validate33;
const schema34 = {"type":"object","properties":{"textDocument":{"type":"object","properties":{"uri":{"type":"string"}},"required":["uri"]}},"required":["textDocument"]};

function validate33(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if((data.textDocument === undefined) && (missing0 = "textDocument")){
validate33.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.textDocument !== undefined){
let data0 = data.textDocument;
const _errs1 = errors;
if(errors === _errs1){
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if((data0.uri === undefined) && (missing1 = "uri")){
validate33.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data0.uri !== undefined){
if(typeof data0.uri !== "string"){
validate33.errors = [{instancePath:instancePath+"/textDocument/uri",schemaPath:"#/properties/textDocument/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate33.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
}
}
}
else {
validate33.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate33.errors = vErrors;
return errors === 0;
}

export const textDocumentSelectionRange = validate34;
const schema35 = {"type":"object","properties":{"textDocument":{"type":"object","properties":{"uri":{"type":"string"}},"required":["uri"]},"positions":{"type":"array","items":{"type":"object","properties":{"line":{"type":"integer","minimum":0},"character":{"type":"integer","minimum":0}},"required":["line","character"]}}},"required":["textDocument","positions"]};

function validate34(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if(((data.textDocument === undefined) && (missing0 = "textDocument")) || ((data.positions === undefined) && (missing0 = "positions"))){
validate34.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.textDocument !== undefined){
let data0 = data.textDocument;
const _errs1 = errors;
if(errors === _errs1){
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if((data0.uri === undefined) && (missing1 = "uri")){
validate34.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data0.uri !== undefined){
if(typeof data0.uri !== "string"){
validate34.errors = [{instancePath:instancePath+"/textDocument/uri",schemaPath:"#/properties/textDocument/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate34.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs1 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.positions !== undefined){
let data2 = data.positions;
const _errs5 = errors;
if(errors === _errs5){
if(Array.isArray(data2)){
var valid2 = true;
const len0 = data2.length;
for(let i0=0; i0<len0; i0++){
let data3 = data2[i0];
const _errs7 = errors;
if(errors === _errs7){
if(data3 && typeof data3 == "object" && !Array.isArray(data3)){
let missing2;
if(((data3.line === undefined) && (missing2 = "line")) || ((data3.character === undefined) && (missing2 = "character"))){
validate34.errors = [{instancePath:instancePath+"/positions/" + i0,schemaPath:"#/properties/positions/items/required",keyword:"required",params:{missingProperty: missing2},message:"must have required property '"+missing2+"'"}];
return false;
}
else {
if(data3.line !== undefined){
let data4 = data3.line;
const _errs9 = errors;
if(!(((typeof data4 == "number") && (!(data4 % 1) && !isNaN(data4))) && (isFinite(data4)))){
validate34.errors = [{instancePath:instancePath+"/positions/" + i0+"/line",schemaPath:"#/properties/positions/items/properties/line/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs9){
if((typeof data4 == "number") && (isFinite(data4))){
if(data4 < 0 || isNaN(data4)){
validate34.errors = [{instancePath:instancePath+"/positions/" + i0+"/line",schemaPath:"#/properties/positions/items/properties/line/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid3 = _errs9 === errors;
}
else {
var valid3 = true;
}
if(valid3){
if(data3.character !== undefined){
let data5 = data3.character;
const _errs11 = errors;
if(!(((typeof data5 == "number") && (!(data5 % 1) && !isNaN(data5))) && (isFinite(data5)))){
validate34.errors = [{instancePath:instancePath+"/positions/" + i0+"/character",schemaPath:"#/properties/positions/items/properties/character/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs11){
if((typeof data5 == "number") && (isFinite(data5))){
if(data5 < 0 || isNaN(data5)){
validate34.errors = [{instancePath:instancePath+"/positions/" + i0+"/character",schemaPath:"#/properties/positions/items/properties/character/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid3 = _errs11 === errors;
}
else {
var valid3 = true;
}
}
}
}
else {
validate34.errors = [{instancePath:instancePath+"/positions/" + i0,schemaPath:"#/properties/positions/items/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid2 = _errs7 === errors;
if(!valid2){
break;
}
}
}
else {
validate34.errors = [{instancePath:instancePath+"/positions",schemaPath:"#/properties/positions/type",keyword:"type",params:{type: "array"},message:"must be array"}];
return false;
}
}
var valid0 = _errs5 === errors;
}
else {
var valid0 = true;
}
}
}
}
else {
validate34.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate34.errors = vErrors;
return errors === 0;
}

export const textDocumentDocumentLink = validate35;
const schema36 = {"type":"object","properties":{"textDocument":{"type":"object","properties":{"uri":{"type":"string"}},"required":["uri"]}},"required":["textDocument"]};

function validate35(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if((data.textDocument === undefined) && (missing0 = "textDocument")){
validate35.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.textDocument !== undefined){
let data0 = data.textDocument;
const _errs1 = errors;
if(errors === _errs1){
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if((data0.uri === undefined) && (missing1 = "uri")){
validate35.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data0.uri !== undefined){
if(typeof data0.uri !== "string"){
validate35.errors = [{instancePath:instancePath+"/textDocument/uri",schemaPath:"#/properties/textDocument/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate35.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
}
}
}
else {
validate35.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate35.errors = vErrors;
return errors === 0;
}

export const textDocumentPrepareCallHierarchy = validate36;
const schema37 = {"type":"object","properties":{"textDocument":{"type":"object","properties":{"uri":{"type":"string"}},"required":["uri"]},"position":{"type":"object","properties":{"line":{"type":"integer","minimum":0},"character":{"type":"integer","minimum":0}},"required":["line","character"]}},"required":["textDocument","position"]};

function validate36(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if(((data.textDocument === undefined) && (missing0 = "textDocument")) || ((data.position === undefined) && (missing0 = "position"))){
validate36.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.textDocument !== undefined){
let data0 = data.textDocument;
const _errs1 = errors;
if(errors === _errs1){
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if((data0.uri === undefined) && (missing1 = "uri")){
validate36.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data0.uri !== undefined){
if(typeof data0.uri !== "string"){
validate36.errors = [{instancePath:instancePath+"/textDocument/uri",schemaPath:"#/properties/textDocument/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate36.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs1 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.position !== undefined){
let data2 = data.position;
const _errs5 = errors;
if(errors === _errs5){
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing2;
if(((data2.line === undefined) && (missing2 = "line")) || ((data2.character === undefined) && (missing2 = "character"))){
validate36.errors = [{instancePath:instancePath+"/position",schemaPath:"#/properties/position/required",keyword:"required",params:{missingProperty: missing2},message:"must have required property '"+missing2+"'"}];
return false;
}
else {
if(data2.line !== undefined){
let data3 = data2.line;
const _errs7 = errors;
if(!(((typeof data3 == "number") && (!(data3 % 1) && !isNaN(data3))) && (isFinite(data3)))){
validate36.errors = [{instancePath:instancePath+"/position/line",schemaPath:"#/properties/position/properties/line/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs7){
if((typeof data3 == "number") && (isFinite(data3))){
if(data3 < 0 || isNaN(data3)){
validate36.errors = [{instancePath:instancePath+"/position/line",schemaPath:"#/properties/position/properties/line/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid2 = _errs7 === errors;
}
else {
var valid2 = true;
}
if(valid2){
if(data2.character !== undefined){
let data4 = data2.character;
const _errs9 = errors;
if(!(((typeof data4 == "number") && (!(data4 % 1) && !isNaN(data4))) && (isFinite(data4)))){
validate36.errors = [{instancePath:instancePath+"/position/character",schemaPath:"#/properties/position/properties/character/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs9){
if((typeof data4 == "number") && (isFinite(data4))){
if(data4 < 0 || isNaN(data4)){
validate36.errors = [{instancePath:instancePath+"/position/character",schemaPath:"#/properties/position/properties/character/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid2 = _errs9 === errors;
}
else {
var valid2 = true;
}
}
}
}
else {
validate36.errors = [{instancePath:instancePath+"/position",schemaPath:"#/properties/position/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs5 === errors;
}
else {
var valid0 = true;
}
}
}
}
else {
validate36.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate36.errors = vErrors;
return errors === 0;
}

export const callHierarchyIncomingCalls = validate37;
const schema38 = {"type":"object","properties":{"item":{"type":"object","properties":{"uri":{"type":"string"}},"required":["uri"]}},"required":["item"]};

function validate37(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if((data.item === undefined) && (missing0 = "item")){
validate37.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.item !== undefined){
let data0 = data.item;
const _errs1 = errors;
if(errors === _errs1){
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if((data0.uri === undefined) && (missing1 = "uri")){
validate37.errors = [{instancePath:instancePath+"/item",schemaPath:"#/properties/item/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data0.uri !== undefined){
if(typeof data0.uri !== "string"){
validate37.errors = [{instancePath:instancePath+"/item/uri",schemaPath:"#/properties/item/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate37.errors = [{instancePath:instancePath+"/item",schemaPath:"#/properties/item/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
}
}
}
else {
validate37.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate37.errors = vErrors;
return errors === 0;
}

export const callHierarchyOutgoingCalls = validate38;
const schema39 = {"type":"object","properties":{"item":{"type":"object","properties":{"uri":{"type":"string"}},"required":["uri"]}},"required":["item"]};

function validate38(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if((data.item === undefined) && (missing0 = "item")){
validate38.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.item !== undefined){
let data0 = data.item;
const _errs1 = errors;
if(errors === _errs1){
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if((data0.uri === undefined) && (missing1 = "uri")){
validate38.errors = [{instancePath:instancePath+"/item",schemaPath:"#/properties/item/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data0.uri !== undefined){
if(typeof data0.uri !== "string"){
validate38.errors = [{instancePath:instancePath+"/item/uri",schemaPath:"#/properties/item/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate38.errors = [{instancePath:instancePath+"/item",schemaPath:"#/properties/item/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
}
}
}
else {
validate38.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate38.errors = vErrors;
return errors === 0;
}

export const workspaceSymbol = validate39;
const schema40 = {"type":"object","properties":{"query":{"type":"string"}},"required":["query"]};

function validate39(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if((data.query === undefined) && (missing0 = "query")){
validate39.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.query !== undefined){
if(typeof data.query !== "string"){
validate39.errors = [{instancePath:instancePath+"/query",schemaPath:"#/properties/query/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate39.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate39.errors = vErrors;
return errors === 0;
}

export const textDocumentInlayHint = validate40;
const schema41 = {"type":"object","properties":{"textDocument":{"type":"object","properties":{"uri":{"type":"string"}},"required":["uri"]},"range":{"type":"object","properties":{"start":{"type":"object","properties":{"line":{"type":"integer","minimum":0},"character":{"type":"integer","minimum":0}},"required":["line","character"]},"end":{"type":"object","properties":{"line":{"type":"integer","minimum":0},"character":{"type":"integer","minimum":0}},"required":["line","character"]}},"required":["start","end"]}},"required":["textDocument","range"]};

function validate40(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if(((data.textDocument === undefined) && (missing0 = "textDocument")) || ((data.range === undefined) && (missing0 = "range"))){
validate40.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.textDocument !== undefined){
let data0 = data.textDocument;
const _errs1 = errors;
if(errors === _errs1){
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if((data0.uri === undefined) && (missing1 = "uri")){
validate40.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data0.uri !== undefined){
if(typeof data0.uri !== "string"){
validate40.errors = [{instancePath:instancePath+"/textDocument/uri",schemaPath:"#/properties/textDocument/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate40.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs1 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.range !== undefined){
let data2 = data.range;
const _errs5 = errors;
if(errors === _errs5){
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing2;
if(((data2.start === undefined) && (missing2 = "start")) || ((data2.end === undefined) && (missing2 = "end"))){
validate40.errors = [{instancePath:instancePath+"/range",schemaPath:"#/properties/range/required",keyword:"required",params:{missingProperty: missing2},message:"must have required property '"+missing2+"'"}];
return false;
}
else {
if(data2.start !== undefined){
let data3 = data2.start;
const _errs7 = errors;
if(errors === _errs7){
if(data3 && typeof data3 == "object" && !Array.isArray(data3)){
let missing3;
if(((data3.line === undefined) && (missing3 = "line")) || ((data3.character === undefined) && (missing3 = "character"))){
validate40.errors = [{instancePath:instancePath+"/range/start",schemaPath:"#/properties/range/properties/start/required",keyword:"required",params:{missingProperty: missing3},message:"must have required property '"+missing3+"'"}];
return false;
}
else {
if(data3.line !== undefined){
let data4 = data3.line;
const _errs9 = errors;
if(!(((typeof data4 == "number") && (!(data4 % 1) && !isNaN(data4))) && (isFinite(data4)))){
validate40.errors = [{instancePath:instancePath+"/range/start/line",schemaPath:"#/properties/range/properties/start/properties/line/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs9){
if((typeof data4 == "number") && (isFinite(data4))){
if(data4 < 0 || isNaN(data4)){
validate40.errors = [{instancePath:instancePath+"/range/start/line",schemaPath:"#/properties/range/properties/start/properties/line/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid3 = _errs9 === errors;
}
else {
var valid3 = true;
}
if(valid3){
if(data3.character !== undefined){
let data5 = data3.character;
const _errs11 = errors;
if(!(((typeof data5 == "number") && (!(data5 % 1) && !isNaN(data5))) && (isFinite(data5)))){
validate40.errors = [{instancePath:instancePath+"/range/start/character",schemaPath:"#/properties/range/properties/start/properties/character/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs11){
if((typeof data5 == "number") && (isFinite(data5))){
if(data5 < 0 || isNaN(data5)){
validate40.errors = [{instancePath:instancePath+"/range/start/character",schemaPath:"#/properties/range/properties/start/properties/character/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid3 = _errs11 === errors;
}
else {
var valid3 = true;
}
}
}
}
else {
validate40.errors = [{instancePath:instancePath+"/range/start",schemaPath:"#/properties/range/properties/start/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid2 = _errs7 === errors;
}
else {
var valid2 = true;
}
if(valid2){
if(data2.end !== undefined){
let data6 = data2.end;
const _errs13 = errors;
if(errors === _errs13){
if(data6 && typeof data6 == "object" && !Array.isArray(data6)){
let missing4;
if(((data6.line === undefined) && (missing4 = "line")) || ((data6.character === undefined) && (missing4 = "character"))){
validate40.errors = [{instancePath:instancePath+"/range/end",schemaPath:"#/properties/range/properties/end/required",keyword:"required",params:{missingProperty: missing4},message:"must have required property '"+missing4+"'"}];
return false;
}
else {
if(data6.line !== undefined){
let data7 = data6.line;
const _errs15 = errors;
if(!(((typeof data7 == "number") && (!(data7 % 1) && !isNaN(data7))) && (isFinite(data7)))){
validate40.errors = [{instancePath:instancePath+"/range/end/line",schemaPath:"#/properties/range/properties/end/properties/line/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs15){
if((typeof data7 == "number") && (isFinite(data7))){
if(data7 < 0 || isNaN(data7)){
validate40.errors = [{instancePath:instancePath+"/range/end/line",schemaPath:"#/properties/range/properties/end/properties/line/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid4 = _errs15 === errors;
}
else {
var valid4 = true;
}
if(valid4){
if(data6.character !== undefined){
let data8 = data6.character;
const _errs17 = errors;
if(!(((typeof data8 == "number") && (!(data8 % 1) && !isNaN(data8))) && (isFinite(data8)))){
validate40.errors = [{instancePath:instancePath+"/range/end/character",schemaPath:"#/properties/range/properties/end/properties/character/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs17){
if((typeof data8 == "number") && (isFinite(data8))){
if(data8 < 0 || isNaN(data8)){
validate40.errors = [{instancePath:instancePath+"/range/end/character",schemaPath:"#/properties/range/properties/end/properties/character/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid4 = _errs17 === errors;
}
else {
var valid4 = true;
}
}
}
}
else {
validate40.errors = [{instancePath:instancePath+"/range/end",schemaPath:"#/properties/range/properties/end/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid2 = _errs13 === errors;
}
else {
var valid2 = true;
}
}
}
}
else {
validate40.errors = [{instancePath:instancePath+"/range",schemaPath:"#/properties/range/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs5 === errors;
}
else {
var valid0 = true;
}
}
}
}
else {
validate40.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate40.errors = vErrors;
return errors === 0;
}

export const inlayHintResolve = validate41;
const schema42 = {"type":"object","properties":{"position":{"type":"object","properties":{"line":{"type":"integer","minimum":0},"character":{"type":"integer","minimum":0}},"required":["line","character"]},"data":{"type":"object","properties":{"uri":{"type":"string"}},"required":["uri"]}},"required":["position","data"]};

function validate41(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if(((data.position === undefined) && (missing0 = "position")) || ((data.data === undefined) && (missing0 = "data"))){
validate41.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.position !== undefined){
let data0 = data.position;
const _errs1 = errors;
if(errors === _errs1){
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if(((data0.line === undefined) && (missing1 = "line")) || ((data0.character === undefined) && (missing1 = "character"))){
validate41.errors = [{instancePath:instancePath+"/position",schemaPath:"#/properties/position/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data0.line !== undefined){
let data1 = data0.line;
const _errs3 = errors;
if(!(((typeof data1 == "number") && (!(data1 % 1) && !isNaN(data1))) && (isFinite(data1)))){
validate41.errors = [{instancePath:instancePath+"/position/line",schemaPath:"#/properties/position/properties/line/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs3){
if((typeof data1 == "number") && (isFinite(data1))){
if(data1 < 0 || isNaN(data1)){
validate41.errors = [{instancePath:instancePath+"/position/line",schemaPath:"#/properties/position/properties/line/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid1 = _errs3 === errors;
}
else {
var valid1 = true;
}
if(valid1){
if(data0.character !== undefined){
let data2 = data0.character;
const _errs5 = errors;
if(!(((typeof data2 == "number") && (!(data2 % 1) && !isNaN(data2))) && (isFinite(data2)))){
validate41.errors = [{instancePath:instancePath+"/position/character",schemaPath:"#/properties/position/properties/character/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs5){
if((typeof data2 == "number") && (isFinite(data2))){
if(data2 < 0 || isNaN(data2)){
validate41.errors = [{instancePath:instancePath+"/position/character",schemaPath:"#/properties/position/properties/character/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid1 = _errs5 === errors;
}
else {
var valid1 = true;
}
}
}
}
else {
validate41.errors = [{instancePath:instancePath+"/position",schemaPath:"#/properties/position/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs1 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.data !== undefined){
let data3 = data.data;
const _errs7 = errors;
if(errors === _errs7){
if(data3 && typeof data3 == "object" && !Array.isArray(data3)){
let missing2;
if((data3.uri === undefined) && (missing2 = "uri")){
validate41.errors = [{instancePath:instancePath+"/data",schemaPath:"#/properties/data/required",keyword:"required",params:{missingProperty: missing2},message:"must have required property '"+missing2+"'"}];
return false;
}
else {
if(data3.uri !== undefined){
if(typeof data3.uri !== "string"){
validate41.errors = [{instancePath:instancePath+"/data/uri",schemaPath:"#/properties/data/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate41.errors = [{instancePath:instancePath+"/data",schemaPath:"#/properties/data/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs7 === errors;
}
else {
var valid0 = true;
}
}
}
}
else {
validate41.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate41.errors = vErrors;
return errors === 0;
}

export const textDocumentCodeLens = validate42;
const schema43 = {"type":"object","properties":{"textDocument":{"type":"object","properties":{"uri":{"type":"string"}},"required":["uri"]}},"required":["textDocument"]};

function validate42(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if((data.textDocument === undefined) && (missing0 = "textDocument")){
validate42.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.textDocument !== undefined){
let data0 = data.textDocument;
const _errs1 = errors;
if(errors === _errs1){
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if((data0.uri === undefined) && (missing1 = "uri")){
validate42.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data0.uri !== undefined){
if(typeof data0.uri !== "string"){
validate42.errors = [{instancePath:instancePath+"/textDocument/uri",schemaPath:"#/properties/textDocument/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate42.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
}
}
}
else {
validate42.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate42.errors = vErrors;
return errors === 0;
}

export const codeLensResolve = validate43;
const schema44 = {"type":"object","properties":{"range":{"type":"object","properties":{"start":{"type":"object","properties":{"line":{"type":"integer","minimum":0},"character":{"type":"integer","minimum":0}},"required":["line","character"]},"end":{"type":"object","properties":{"line":{"type":"integer","minimum":0},"character":{"type":"integer","minimum":0}},"required":["line","character"]}},"required":["start","end"]},"data":{"type":"object","properties":{"uri":{"type":"string"}},"required":["uri"]}},"required":["range","data"]};

function validate43(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if(((data.range === undefined) && (missing0 = "range")) || ((data.data === undefined) && (missing0 = "data"))){
validate43.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.range !== undefined){
let data0 = data.range;
const _errs1 = errors;
if(errors === _errs1){
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if(((data0.start === undefined) && (missing1 = "start")) || ((data0.end === undefined) && (missing1 = "end"))){
validate43.errors = [{instancePath:instancePath+"/range",schemaPath:"#/properties/range/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data0.start !== undefined){
let data1 = data0.start;
const _errs3 = errors;
if(errors === _errs3){
if(data1 && typeof data1 == "object" && !Array.isArray(data1)){
let missing2;
if(((data1.line === undefined) && (missing2 = "line")) || ((data1.character === undefined) && (missing2 = "character"))){
validate43.errors = [{instancePath:instancePath+"/range/start",schemaPath:"#/properties/range/properties/start/required",keyword:"required",params:{missingProperty: missing2},message:"must have required property '"+missing2+"'"}];
return false;
}
else {
if(data1.line !== undefined){
let data2 = data1.line;
const _errs5 = errors;
if(!(((typeof data2 == "number") && (!(data2 % 1) && !isNaN(data2))) && (isFinite(data2)))){
validate43.errors = [{instancePath:instancePath+"/range/start/line",schemaPath:"#/properties/range/properties/start/properties/line/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs5){
if((typeof data2 == "number") && (isFinite(data2))){
if(data2 < 0 || isNaN(data2)){
validate43.errors = [{instancePath:instancePath+"/range/start/line",schemaPath:"#/properties/range/properties/start/properties/line/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid2 = _errs5 === errors;
}
else {
var valid2 = true;
}
if(valid2){
if(data1.character !== undefined){
let data3 = data1.character;
const _errs7 = errors;
if(!(((typeof data3 == "number") && (!(data3 % 1) && !isNaN(data3))) && (isFinite(data3)))){
validate43.errors = [{instancePath:instancePath+"/range/start/character",schemaPath:"#/properties/range/properties/start/properties/character/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs7){
if((typeof data3 == "number") && (isFinite(data3))){
if(data3 < 0 || isNaN(data3)){
validate43.errors = [{instancePath:instancePath+"/range/start/character",schemaPath:"#/properties/range/properties/start/properties/character/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid2 = _errs7 === errors;
}
else {
var valid2 = true;
}
}
}
}
else {
validate43.errors = [{instancePath:instancePath+"/range/start",schemaPath:"#/properties/range/properties/start/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid1 = _errs3 === errors;
}
else {
var valid1 = true;
}
if(valid1){
if(data0.end !== undefined){
let data4 = data0.end;
const _errs9 = errors;
if(errors === _errs9){
if(data4 && typeof data4 == "object" && !Array.isArray(data4)){
let missing3;
if(((data4.line === undefined) && (missing3 = "line")) || ((data4.character === undefined) && (missing3 = "character"))){
validate43.errors = [{instancePath:instancePath+"/range/end",schemaPath:"#/properties/range/properties/end/required",keyword:"required",params:{missingProperty: missing3},message:"must have required property '"+missing3+"'"}];
return false;
}
else {
if(data4.line !== undefined){
let data5 = data4.line;
const _errs11 = errors;
if(!(((typeof data5 == "number") && (!(data5 % 1) && !isNaN(data5))) && (isFinite(data5)))){
validate43.errors = [{instancePath:instancePath+"/range/end/line",schemaPath:"#/properties/range/properties/end/properties/line/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs11){
if((typeof data5 == "number") && (isFinite(data5))){
if(data5 < 0 || isNaN(data5)){
validate43.errors = [{instancePath:instancePath+"/range/end/line",schemaPath:"#/properties/range/properties/end/properties/line/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid3 = _errs11 === errors;
}
else {
var valid3 = true;
}
if(valid3){
if(data4.character !== undefined){
let data6 = data4.character;
const _errs13 = errors;
if(!(((typeof data6 == "number") && (!(data6 % 1) && !isNaN(data6))) && (isFinite(data6)))){
validate43.errors = [{instancePath:instancePath+"/range/end/character",schemaPath:"#/properties/range/properties/end/properties/character/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs13){
if((typeof data6 == "number") && (isFinite(data6))){
if(data6 < 0 || isNaN(data6)){
validate43.errors = [{instancePath:instancePath+"/range/end/character",schemaPath:"#/properties/range/properties/end/properties/character/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid3 = _errs13 === errors;
}
else {
var valid3 = true;
}
}
}
}
else {
validate43.errors = [{instancePath:instancePath+"/range/end",schemaPath:"#/properties/range/properties/end/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid1 = _errs9 === errors;
}
else {
var valid1 = true;
}
}
}
}
else {
validate43.errors = [{instancePath:instancePath+"/range",schemaPath:"#/properties/range/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs1 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.data !== undefined){
let data7 = data.data;
const _errs15 = errors;
if(errors === _errs15){
if(data7 && typeof data7 == "object" && !Array.isArray(data7)){
let missing4;
if((data7.uri === undefined) && (missing4 = "uri")){
validate43.errors = [{instancePath:instancePath+"/data",schemaPath:"#/properties/data/required",keyword:"required",params:{missingProperty: missing4},message:"must have required property '"+missing4+"'"}];
return false;
}
else {
if(data7.uri !== undefined){
if(typeof data7.uri !== "string"){
validate43.errors = [{instancePath:instancePath+"/data/uri",schemaPath:"#/properties/data/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate43.errors = [{instancePath:instancePath+"/data",schemaPath:"#/properties/data/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs15 === errors;
}
else {
var valid0 = true;
}
}
}
}
else {
validate43.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate43.errors = vErrors;
return errors === 0;
}

export const workspaceWillRenameFiles = validate44;
const schema45 = {"type":"object","properties":{"files":{"type":"array","items":{"type":"object","properties":{"oldUri":{"type":"string"},"newUri":{"type":"string"}},"required":["oldUri","newUri"]}}},"required":["files"]};

function validate44(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if((data.files === undefined) && (missing0 = "files")){
validate44.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.files !== undefined){
let data0 = data.files;
const _errs1 = errors;
if(errors === _errs1){
if(Array.isArray(data0)){
var valid1 = true;
const len0 = data0.length;
for(let i0=0; i0<len0; i0++){
let data1 = data0[i0];
const _errs3 = errors;
if(errors === _errs3){
if(data1 && typeof data1 == "object" && !Array.isArray(data1)){
let missing1;
if(((data1.oldUri === undefined) && (missing1 = "oldUri")) || ((data1.newUri === undefined) && (missing1 = "newUri"))){
validate44.errors = [{instancePath:instancePath+"/files/" + i0,schemaPath:"#/properties/files/items/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data1.oldUri !== undefined){
const _errs5 = errors;
if(typeof data1.oldUri !== "string"){
validate44.errors = [{instancePath:instancePath+"/files/" + i0+"/oldUri",schemaPath:"#/properties/files/items/properties/oldUri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid2 = _errs5 === errors;
}
else {
var valid2 = true;
}
if(valid2){
if(data1.newUri !== undefined){
const _errs7 = errors;
if(typeof data1.newUri !== "string"){
validate44.errors = [{instancePath:instancePath+"/files/" + i0+"/newUri",schemaPath:"#/properties/files/items/properties/newUri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid2 = _errs7 === errors;
}
else {
var valid2 = true;
}
}
}
}
else {
validate44.errors = [{instancePath:instancePath+"/files/" + i0,schemaPath:"#/properties/files/items/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid1 = _errs3 === errors;
if(!valid1){
break;
}
}
}
else {
validate44.errors = [{instancePath:instancePath+"/files",schemaPath:"#/properties/files/type",keyword:"type",params:{type: "array"},message:"must be array"}];
return false;
}
}
}
}
}
else {
validate44.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate44.errors = vErrors;
return errors === 0;
}

export const workspaceDidRenameFiles = validate45;
const schema46 = {"type":"object","properties":{"files":{"type":"array","items":{"type":"object","properties":{"oldUri":{"type":"string"},"newUri":{"type":"string"}},"required":["oldUri","newUri"]}}},"required":["files"]};

function validate45(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if((data.files === undefined) && (missing0 = "files")){
validate45.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.files !== undefined){
let data0 = data.files;
const _errs1 = errors;
if(errors === _errs1){
if(Array.isArray(data0)){
var valid1 = true;
const len0 = data0.length;
for(let i0=0; i0<len0; i0++){
let data1 = data0[i0];
const _errs3 = errors;
if(errors === _errs3){
if(data1 && typeof data1 == "object" && !Array.isArray(data1)){
let missing1;
if(((data1.oldUri === undefined) && (missing1 = "oldUri")) || ((data1.newUri === undefined) && (missing1 = "newUri"))){
validate45.errors = [{instancePath:instancePath+"/files/" + i0,schemaPath:"#/properties/files/items/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data1.oldUri !== undefined){
const _errs5 = errors;
if(typeof data1.oldUri !== "string"){
validate45.errors = [{instancePath:instancePath+"/files/" + i0+"/oldUri",schemaPath:"#/properties/files/items/properties/oldUri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid2 = _errs5 === errors;
}
else {
var valid2 = true;
}
if(valid2){
if(data1.newUri !== undefined){
const _errs7 = errors;
if(typeof data1.newUri !== "string"){
validate45.errors = [{instancePath:instancePath+"/files/" + i0+"/newUri",schemaPath:"#/properties/files/items/properties/newUri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid2 = _errs7 === errors;
}
else {
var valid2 = true;
}
}
}
}
else {
validate45.errors = [{instancePath:instancePath+"/files/" + i0,schemaPath:"#/properties/files/items/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid1 = _errs3 === errors;
if(!valid1){
break;
}
}
}
else {
validate45.errors = [{instancePath:instancePath+"/files",schemaPath:"#/properties/files/type",keyword:"type",params:{type: "array"},message:"must be array"}];
return false;
}
}
}
}
}
else {
validate45.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate45.errors = vErrors;
return errors === 0;
}

export const textDocumentFormatting = validate46;
const schema47 = {"type":"object","properties":{"textDocument":{"type":"object","properties":{"uri":{"type":"string"}},"required":["uri"]}},"required":["textDocument"]};

function validate46(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if((data.textDocument === undefined) && (missing0 = "textDocument")){
validate46.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.textDocument !== undefined){
let data0 = data.textDocument;
const _errs1 = errors;
if(errors === _errs1){
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if((data0.uri === undefined) && (missing1 = "uri")){
validate46.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data0.uri !== undefined){
if(typeof data0.uri !== "string"){
validate46.errors = [{instancePath:instancePath+"/textDocument/uri",schemaPath:"#/properties/textDocument/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate46.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
}
}
}
else {
validate46.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate46.errors = vErrors;
return errors === 0;
}

export const textDocumentOnTypeFormatting = validate47;
const schema48 = {"type":"object","properties":{"textDocument":{"type":"object","properties":{"uri":{"type":"string"}},"required":["uri"]},"position":{"type":"object","properties":{"line":{"type":"integer","minimum":0},"character":{"type":"integer","minimum":0}},"required":["line","character"]},"ch":{"type":"string"}},"required":["textDocument","position","ch"]};

function validate47(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if((((data.textDocument === undefined) && (missing0 = "textDocument")) || ((data.position === undefined) && (missing0 = "position"))) || ((data.ch === undefined) && (missing0 = "ch"))){
validate47.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.textDocument !== undefined){
let data0 = data.textDocument;
const _errs1 = errors;
if(errors === _errs1){
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if((data0.uri === undefined) && (missing1 = "uri")){
validate47.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data0.uri !== undefined){
if(typeof data0.uri !== "string"){
validate47.errors = [{instancePath:instancePath+"/textDocument/uri",schemaPath:"#/properties/textDocument/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate47.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs1 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.position !== undefined){
let data2 = data.position;
const _errs5 = errors;
if(errors === _errs5){
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing2;
if(((data2.line === undefined) && (missing2 = "line")) || ((data2.character === undefined) && (missing2 = "character"))){
validate47.errors = [{instancePath:instancePath+"/position",schemaPath:"#/properties/position/required",keyword:"required",params:{missingProperty: missing2},message:"must have required property '"+missing2+"'"}];
return false;
}
else {
if(data2.line !== undefined){
let data3 = data2.line;
const _errs7 = errors;
if(!(((typeof data3 == "number") && (!(data3 % 1) && !isNaN(data3))) && (isFinite(data3)))){
validate47.errors = [{instancePath:instancePath+"/position/line",schemaPath:"#/properties/position/properties/line/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs7){
if((typeof data3 == "number") && (isFinite(data3))){
if(data3 < 0 || isNaN(data3)){
validate47.errors = [{instancePath:instancePath+"/position/line",schemaPath:"#/properties/position/properties/line/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid2 = _errs7 === errors;
}
else {
var valid2 = true;
}
if(valid2){
if(data2.character !== undefined){
let data4 = data2.character;
const _errs9 = errors;
if(!(((typeof data4 == "number") && (!(data4 % 1) && !isNaN(data4))) && (isFinite(data4)))){
validate47.errors = [{instancePath:instancePath+"/position/character",schemaPath:"#/properties/position/properties/character/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs9){
if((typeof data4 == "number") && (isFinite(data4))){
if(data4 < 0 || isNaN(data4)){
validate47.errors = [{instancePath:instancePath+"/position/character",schemaPath:"#/properties/position/properties/character/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid2 = _errs9 === errors;
}
else {
var valid2 = true;
}
}
}
}
else {
validate47.errors = [{instancePath:instancePath+"/position",schemaPath:"#/properties/position/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs5 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.ch !== undefined){
const _errs11 = errors;
if(typeof data.ch !== "string"){
validate47.errors = [{instancePath:instancePath+"/ch",schemaPath:"#/properties/ch/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid0 = _errs11 === errors;
}
else {
var valid0 = true;
}
}
}
}
}
else {
validate47.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate47.errors = vErrors;
return errors === 0;
}

export const textDocumentCompletion = validate48;
const schema49 = {"type":"object","properties":{"textDocument":{"type":"object","properties":{"uri":{"type":"string"}},"required":["uri"]},"position":{"type":"object","properties":{"line":{"type":"integer","minimum":0},"character":{"type":"integer","minimum":0}},"required":["line","character"]}},"required":["textDocument","position"]};

function validate48(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if(((data.textDocument === undefined) && (missing0 = "textDocument")) || ((data.position === undefined) && (missing0 = "position"))){
validate48.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.textDocument !== undefined){
let data0 = data.textDocument;
const _errs1 = errors;
if(errors === _errs1){
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if((data0.uri === undefined) && (missing1 = "uri")){
validate48.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data0.uri !== undefined){
if(typeof data0.uri !== "string"){
validate48.errors = [{instancePath:instancePath+"/textDocument/uri",schemaPath:"#/properties/textDocument/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate48.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs1 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.position !== undefined){
let data2 = data.position;
const _errs5 = errors;
if(errors === _errs5){
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing2;
if(((data2.line === undefined) && (missing2 = "line")) || ((data2.character === undefined) && (missing2 = "character"))){
validate48.errors = [{instancePath:instancePath+"/position",schemaPath:"#/properties/position/required",keyword:"required",params:{missingProperty: missing2},message:"must have required property '"+missing2+"'"}];
return false;
}
else {
if(data2.line !== undefined){
let data3 = data2.line;
const _errs7 = errors;
if(!(((typeof data3 == "number") && (!(data3 % 1) && !isNaN(data3))) && (isFinite(data3)))){
validate48.errors = [{instancePath:instancePath+"/position/line",schemaPath:"#/properties/position/properties/line/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs7){
if((typeof data3 == "number") && (isFinite(data3))){
if(data3 < 0 || isNaN(data3)){
validate48.errors = [{instancePath:instancePath+"/position/line",schemaPath:"#/properties/position/properties/line/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid2 = _errs7 === errors;
}
else {
var valid2 = true;
}
if(valid2){
if(data2.character !== undefined){
let data4 = data2.character;
const _errs9 = errors;
if(!(((typeof data4 == "number") && (!(data4 % 1) && !isNaN(data4))) && (isFinite(data4)))){
validate48.errors = [{instancePath:instancePath+"/position/character",schemaPath:"#/properties/position/properties/character/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs9){
if((typeof data4 == "number") && (isFinite(data4))){
if(data4 < 0 || isNaN(data4)){
validate48.errors = [{instancePath:instancePath+"/position/character",schemaPath:"#/properties/position/properties/character/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid2 = _errs9 === errors;
}
else {
var valid2 = true;
}
}
}
}
else {
validate48.errors = [{instancePath:instancePath+"/position",schemaPath:"#/properties/position/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs5 === errors;
}
else {
var valid0 = true;
}
}
}
}
else {
validate48.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate48.errors = vErrors;
return errors === 0;
}

export const completionItemResolve = validate49;
const schema50 = {"type":"object","properties":{"label":{"type":"string"},"data":{"type":"object","properties":{"uri":{"type":"string"},"path":{"type":"string"},"part":{"type":"string"}},"required":["uri","path","part"]}},"required":["label"]};

function validate49(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if((data.label === undefined) && (missing0 = "label")){
validate49.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.label !== undefined){
const _errs1 = errors;
if(typeof data.label !== "string"){
validate49.errors = [{instancePath:instancePath+"/label",schemaPath:"#/properties/label/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid0 = _errs1 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.data !== undefined){
let data1 = data.data;
const _errs3 = errors;
if(errors === _errs3){
if(data1 && typeof data1 == "object" && !Array.isArray(data1)){
let missing1;
if((((data1.uri === undefined) && (missing1 = "uri")) || ((data1.path === undefined) && (missing1 = "path"))) || ((data1.part === undefined) && (missing1 = "part"))){
validate49.errors = [{instancePath:instancePath+"/data",schemaPath:"#/properties/data/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data1.uri !== undefined){
const _errs5 = errors;
if(typeof data1.uri !== "string"){
validate49.errors = [{instancePath:instancePath+"/data/uri",schemaPath:"#/properties/data/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid1 = _errs5 === errors;
}
else {
var valid1 = true;
}
if(valid1){
if(data1.path !== undefined){
const _errs7 = errors;
if(typeof data1.path !== "string"){
validate49.errors = [{instancePath:instancePath+"/data/path",schemaPath:"#/properties/data/properties/path/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid1 = _errs7 === errors;
}
else {
var valid1 = true;
}
if(valid1){
if(data1.part !== undefined){
const _errs9 = errors;
if(typeof data1.part !== "string"){
validate49.errors = [{instancePath:instancePath+"/data/part",schemaPath:"#/properties/data/properties/part/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid1 = _errs9 === errors;
}
else {
var valid1 = true;
}
}
}
}
}
else {
validate49.errors = [{instancePath:instancePath+"/data",schemaPath:"#/properties/data/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs3 === errors;
}
else {
var valid0 = true;
}
}
}
}
else {
validate49.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate49.errors = vErrors;
return errors === 0;
}

export const textDocumentDocumentSymbol = validate50;
const schema51 = {"type":"object","properties":{"textDocument":{"type":"object","properties":{"uri":{"type":"string"}},"required":["uri"]}},"required":["textDocument"]};

function validate50(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if((data.textDocument === undefined) && (missing0 = "textDocument")){
validate50.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.textDocument !== undefined){
let data0 = data.textDocument;
const _errs1 = errors;
if(errors === _errs1){
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if((data0.uri === undefined) && (missing1 = "uri")){
validate50.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data0.uri !== undefined){
if(typeof data0.uri !== "string"){
validate50.errors = [{instancePath:instancePath+"/textDocument/uri",schemaPath:"#/properties/textDocument/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate50.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
}
}
}
else {
validate50.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate50.errors = vErrors;
return errors === 0;
}

export const textDocumentCodeAction = validate51;
const schema52 = {"type":"object","properties":{"textDocument":{"type":"object","properties":{"uri":{"type":"string"}},"required":["uri"]},"range":{"type":"object","properties":{"start":{"type":"object","properties":{"line":{"type":"integer","minimum":0},"character":{"type":"integer","minimum":0}},"required":["line","character"]},"end":{"type":"object","properties":{"line":{"type":"integer","minimum":0},"character":{"type":"integer","minimum":0}},"required":["line","character"]}},"required":["start","end"]},"context":{"type":"object","properties":{"diagnostics":{"type":"array","items":{"type":"object","properties":{},"required":[]}},"only":{"anyOf":[{"type":"null"},{"type":"array","items":{"type":"string"}}]}},"required":["diagnostics"]}},"required":["textDocument","range","context"]};

function validate51(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if((((data.textDocument === undefined) && (missing0 = "textDocument")) || ((data.range === undefined) && (missing0 = "range"))) || ((data.context === undefined) && (missing0 = "context"))){
validate51.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.textDocument !== undefined){
let data0 = data.textDocument;
const _errs1 = errors;
if(errors === _errs1){
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if((data0.uri === undefined) && (missing1 = "uri")){
validate51.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data0.uri !== undefined){
if(typeof data0.uri !== "string"){
validate51.errors = [{instancePath:instancePath+"/textDocument/uri",schemaPath:"#/properties/textDocument/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate51.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs1 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.range !== undefined){
let data2 = data.range;
const _errs5 = errors;
if(errors === _errs5){
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing2;
if(((data2.start === undefined) && (missing2 = "start")) || ((data2.end === undefined) && (missing2 = "end"))){
validate51.errors = [{instancePath:instancePath+"/range",schemaPath:"#/properties/range/required",keyword:"required",params:{missingProperty: missing2},message:"must have required property '"+missing2+"'"}];
return false;
}
else {
if(data2.start !== undefined){
let data3 = data2.start;
const _errs7 = errors;
if(errors === _errs7){
if(data3 && typeof data3 == "object" && !Array.isArray(data3)){
let missing3;
if(((data3.line === undefined) && (missing3 = "line")) || ((data3.character === undefined) && (missing3 = "character"))){
validate51.errors = [{instancePath:instancePath+"/range/start",schemaPath:"#/properties/range/properties/start/required",keyword:"required",params:{missingProperty: missing3},message:"must have required property '"+missing3+"'"}];
return false;
}
else {
if(data3.line !== undefined){
let data4 = data3.line;
const _errs9 = errors;
if(!(((typeof data4 == "number") && (!(data4 % 1) && !isNaN(data4))) && (isFinite(data4)))){
validate51.errors = [{instancePath:instancePath+"/range/start/line",schemaPath:"#/properties/range/properties/start/properties/line/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs9){
if((typeof data4 == "number") && (isFinite(data4))){
if(data4 < 0 || isNaN(data4)){
validate51.errors = [{instancePath:instancePath+"/range/start/line",schemaPath:"#/properties/range/properties/start/properties/line/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid3 = _errs9 === errors;
}
else {
var valid3 = true;
}
if(valid3){
if(data3.character !== undefined){
let data5 = data3.character;
const _errs11 = errors;
if(!(((typeof data5 == "number") && (!(data5 % 1) && !isNaN(data5))) && (isFinite(data5)))){
validate51.errors = [{instancePath:instancePath+"/range/start/character",schemaPath:"#/properties/range/properties/start/properties/character/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs11){
if((typeof data5 == "number") && (isFinite(data5))){
if(data5 < 0 || isNaN(data5)){
validate51.errors = [{instancePath:instancePath+"/range/start/character",schemaPath:"#/properties/range/properties/start/properties/character/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid3 = _errs11 === errors;
}
else {
var valid3 = true;
}
}
}
}
else {
validate51.errors = [{instancePath:instancePath+"/range/start",schemaPath:"#/properties/range/properties/start/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid2 = _errs7 === errors;
}
else {
var valid2 = true;
}
if(valid2){
if(data2.end !== undefined){
let data6 = data2.end;
const _errs13 = errors;
if(errors === _errs13){
if(data6 && typeof data6 == "object" && !Array.isArray(data6)){
let missing4;
if(((data6.line === undefined) && (missing4 = "line")) || ((data6.character === undefined) && (missing4 = "character"))){
validate51.errors = [{instancePath:instancePath+"/range/end",schemaPath:"#/properties/range/properties/end/required",keyword:"required",params:{missingProperty: missing4},message:"must have required property '"+missing4+"'"}];
return false;
}
else {
if(data6.line !== undefined){
let data7 = data6.line;
const _errs15 = errors;
if(!(((typeof data7 == "number") && (!(data7 % 1) && !isNaN(data7))) && (isFinite(data7)))){
validate51.errors = [{instancePath:instancePath+"/range/end/line",schemaPath:"#/properties/range/properties/end/properties/line/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs15){
if((typeof data7 == "number") && (isFinite(data7))){
if(data7 < 0 || isNaN(data7)){
validate51.errors = [{instancePath:instancePath+"/range/end/line",schemaPath:"#/properties/range/properties/end/properties/line/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid4 = _errs15 === errors;
}
else {
var valid4 = true;
}
if(valid4){
if(data6.character !== undefined){
let data8 = data6.character;
const _errs17 = errors;
if(!(((typeof data8 == "number") && (!(data8 % 1) && !isNaN(data8))) && (isFinite(data8)))){
validate51.errors = [{instancePath:instancePath+"/range/end/character",schemaPath:"#/properties/range/properties/end/properties/character/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs17){
if((typeof data8 == "number") && (isFinite(data8))){
if(data8 < 0 || isNaN(data8)){
validate51.errors = [{instancePath:instancePath+"/range/end/character",schemaPath:"#/properties/range/properties/end/properties/character/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid4 = _errs17 === errors;
}
else {
var valid4 = true;
}
}
}
}
else {
validate51.errors = [{instancePath:instancePath+"/range/end",schemaPath:"#/properties/range/properties/end/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid2 = _errs13 === errors;
}
else {
var valid2 = true;
}
}
}
}
else {
validate51.errors = [{instancePath:instancePath+"/range",schemaPath:"#/properties/range/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs5 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.context !== undefined){
let data9 = data.context;
const _errs19 = errors;
if(errors === _errs19){
if(data9 && typeof data9 == "object" && !Array.isArray(data9)){
let missing5;
if((data9.diagnostics === undefined) && (missing5 = "diagnostics")){
validate51.errors = [{instancePath:instancePath+"/context",schemaPath:"#/properties/context/required",keyword:"required",params:{missingProperty: missing5},message:"must have required property '"+missing5+"'"}];
return false;
}
else {
if(data9.diagnostics !== undefined){
let data10 = data9.diagnostics;
const _errs21 = errors;
if(errors === _errs21){
if(Array.isArray(data10)){
var valid6 = true;
const len0 = data10.length;
for(let i0=0; i0<len0; i0++){
let data11 = data10[i0];
const _errs23 = errors;
if(errors === _errs23){
if(!(data11 && typeof data11 == "object" && !Array.isArray(data11))){
validate51.errors = [{instancePath:instancePath+"/context/diagnostics/" + i0,schemaPath:"#/properties/context/properties/diagnostics/items/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid6 = _errs23 === errors;
if(!valid6){
break;
}
}
}
else {
validate51.errors = [{instancePath:instancePath+"/context/diagnostics",schemaPath:"#/properties/context/properties/diagnostics/type",keyword:"type",params:{type: "array"},message:"must be array"}];
return false;
}
}
var valid5 = _errs21 === errors;
}
else {
var valid5 = true;
}
if(valid5){
if(data9.only !== undefined){
let data12 = data9.only;
const _errs25 = errors;
const _errs26 = errors;
let valid7 = false;
const _errs27 = errors;
if(data12 !== null){
const err0 = {instancePath:instancePath+"/context/only",schemaPath:"#/properties/context/properties/only/anyOf/0/type",keyword:"type",params:{type: "null"},message:"must be null"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
var _valid0 = _errs27 === errors;
valid7 = valid7 || _valid0;
if(!valid7){
const _errs29 = errors;
if(errors === _errs29){
if(Array.isArray(data12)){
var valid8 = true;
const len1 = data12.length;
for(let i1=0; i1<len1; i1++){
const _errs31 = errors;
if(typeof data12[i1] !== "string"){
const err1 = {instancePath:instancePath+"/context/only/" + i1,schemaPath:"#/properties/context/properties/only/anyOf/1/items/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
var valid8 = _errs31 === errors;
if(!valid8){
break;
}
}
}
else {
const err2 = {instancePath:instancePath+"/context/only",schemaPath:"#/properties/context/properties/only/anyOf/1/type",keyword:"type",params:{type: "array"},message:"must be array"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
var _valid0 = _errs29 === errors;
valid7 = valid7 || _valid0;
}
if(!valid7){
const err3 = {instancePath:instancePath+"/context/only",schemaPath:"#/properties/context/properties/only/anyOf",keyword:"anyOf",params:{},message:"must match a schema in anyOf"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
validate51.errors = vErrors;
return false;
}
else {
errors = _errs26;
if(vErrors !== null){
if(_errs26){
vErrors.length = _errs26;
}
else {
vErrors = null;
}
}
}
var valid5 = _errs25 === errors;
}
else {
var valid5 = true;
}
}
}
}
else {
validate51.errors = [{instancePath:instancePath+"/context",schemaPath:"#/properties/context/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs19 === errors;
}
else {
var valid0 = true;
}
}
}
}
}
else {
validate51.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate51.errors = vErrors;
return errors === 0;
}

export const codeActionResolve = validate52;
const schema53 = {"type":"object","properties":{"title":{"type":"string"},"data":{"type":"object","properties":{"answer":{"type":"integer"},"at":{"type":"integer"}},"required":["answer","at"]}},"required":["title"]};

function validate52(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if((data.title === undefined) && (missing0 = "title")){
validate52.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.title !== undefined){
const _errs1 = errors;
if(typeof data.title !== "string"){
validate52.errors = [{instancePath:instancePath+"/title",schemaPath:"#/properties/title/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid0 = _errs1 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.data !== undefined){
let data1 = data.data;
const _errs3 = errors;
if(errors === _errs3){
if(data1 && typeof data1 == "object" && !Array.isArray(data1)){
let missing1;
if(((data1.answer === undefined) && (missing1 = "answer")) || ((data1.at === undefined) && (missing1 = "at"))){
validate52.errors = [{instancePath:instancePath+"/data",schemaPath:"#/properties/data/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data1.answer !== undefined){
let data2 = data1.answer;
const _errs5 = errors;
if(!(((typeof data2 == "number") && (!(data2 % 1) && !isNaN(data2))) && (isFinite(data2)))){
validate52.errors = [{instancePath:instancePath+"/data/answer",schemaPath:"#/properties/data/properties/answer/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
var valid1 = _errs5 === errors;
}
else {
var valid1 = true;
}
if(valid1){
if(data1.at !== undefined){
let data3 = data1.at;
const _errs7 = errors;
if(!(((typeof data3 == "number") && (!(data3 % 1) && !isNaN(data3))) && (isFinite(data3)))){
validate52.errors = [{instancePath:instancePath+"/data/at",schemaPath:"#/properties/data/properties/at/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
var valid1 = _errs7 === errors;
}
else {
var valid1 = true;
}
}
}
}
else {
validate52.errors = [{instancePath:instancePath+"/data",schemaPath:"#/properties/data/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs3 === errors;
}
else {
var valid0 = true;
}
}
}
}
else {
validate52.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate52.errors = vErrors;
return errors === 0;
}

export const textDocumentDiagnostic = validate53;
const schema54 = {"type":"object","properties":{"textDocument":{"type":"object","properties":{"uri":{"type":"string"}},"required":["uri"]},"previousResultId":{"anyOf":[{"type":"null"},{"type":"string"}]}},"required":["textDocument"]};

function validate53(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if((data.textDocument === undefined) && (missing0 = "textDocument")){
validate53.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.textDocument !== undefined){
let data0 = data.textDocument;
const _errs1 = errors;
if(errors === _errs1){
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if((data0.uri === undefined) && (missing1 = "uri")){
validate53.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data0.uri !== undefined){
if(typeof data0.uri !== "string"){
validate53.errors = [{instancePath:instancePath+"/textDocument/uri",schemaPath:"#/properties/textDocument/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate53.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs1 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.previousResultId !== undefined){
let data2 = data.previousResultId;
const _errs5 = errors;
const _errs6 = errors;
let valid2 = false;
const _errs7 = errors;
if(data2 !== null){
const err0 = {instancePath:instancePath+"/previousResultId",schemaPath:"#/properties/previousResultId/anyOf/0/type",keyword:"type",params:{type: "null"},message:"must be null"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
var _valid0 = _errs7 === errors;
valid2 = valid2 || _valid0;
if(!valid2){
const _errs9 = errors;
if(typeof data2 !== "string"){
const err1 = {instancePath:instancePath+"/previousResultId",schemaPath:"#/properties/previousResultId/anyOf/1/type",keyword:"type",params:{type: "string"},message:"must be string"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
var _valid0 = _errs9 === errors;
valid2 = valid2 || _valid0;
}
if(!valid2){
const err2 = {instancePath:instancePath+"/previousResultId",schemaPath:"#/properties/previousResultId/anyOf",keyword:"anyOf",params:{},message:"must match a schema in anyOf"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
validate53.errors = vErrors;
return false;
}
else {
errors = _errs6;
if(vErrors !== null){
if(_errs6){
vErrors.length = _errs6;
}
else {
vErrors = null;
}
}
}
var valid0 = _errs5 === errors;
}
else {
var valid0 = true;
}
}
}
}
else {
validate53.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate53.errors = vErrors;
return errors === 0;
}

export const workspaceDiagnostic = validate54;
const schema55 = {"type":"object","properties":{"previousResultIds":{"type":"array","items":{"type":"object","properties":{"uri":{"type":"string"},"value":{"type":"string"}},"required":["uri","value"]}}},"required":["previousResultIds"]};

function validate54(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if((data.previousResultIds === undefined) && (missing0 = "previousResultIds")){
validate54.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.previousResultIds !== undefined){
let data0 = data.previousResultIds;
const _errs1 = errors;
if(errors === _errs1){
if(Array.isArray(data0)){
var valid1 = true;
const len0 = data0.length;
for(let i0=0; i0<len0; i0++){
let data1 = data0[i0];
const _errs3 = errors;
if(errors === _errs3){
if(data1 && typeof data1 == "object" && !Array.isArray(data1)){
let missing1;
if(((data1.uri === undefined) && (missing1 = "uri")) || ((data1.value === undefined) && (missing1 = "value"))){
validate54.errors = [{instancePath:instancePath+"/previousResultIds/" + i0,schemaPath:"#/properties/previousResultIds/items/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data1.uri !== undefined){
const _errs5 = errors;
if(typeof data1.uri !== "string"){
validate54.errors = [{instancePath:instancePath+"/previousResultIds/" + i0+"/uri",schemaPath:"#/properties/previousResultIds/items/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid2 = _errs5 === errors;
}
else {
var valid2 = true;
}
if(valid2){
if(data1.value !== undefined){
const _errs7 = errors;
if(typeof data1.value !== "string"){
validate54.errors = [{instancePath:instancePath+"/previousResultIds/" + i0+"/value",schemaPath:"#/properties/previousResultIds/items/properties/value/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid2 = _errs7 === errors;
}
else {
var valid2 = true;
}
}
}
}
else {
validate54.errors = [{instancePath:instancePath+"/previousResultIds/" + i0,schemaPath:"#/properties/previousResultIds/items/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid1 = _errs3 === errors;
if(!valid1){
break;
}
}
}
else {
validate54.errors = [{instancePath:instancePath+"/previousResultIds",schemaPath:"#/properties/previousResultIds/type",keyword:"type",params:{type: "array"},message:"must be array"}];
return false;
}
}
}
}
}
else {
validate54.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate54.errors = vErrors;
return errors === 0;
}

export const workspaceExecuteCommand = validate55;
const schema56 = {"type":"object","properties":{"command":{"type":"string"}},"required":["command"]};

function validate55(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if((data.command === undefined) && (missing0 = "command")){
validate55.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.command !== undefined){
if(typeof data.command !== "string"){
validate55.errors = [{instancePath:instancePath+"/command",schemaPath:"#/properties/command/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate55.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate55.errors = vErrors;
return errors === 0;
}

export const fettleExplain = validate56;
const schema57 = {"type":"object","properties":{"check":{"type":"string"}},"required":["check"]};

function validate56(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if((data.check === undefined) && (missing0 = "check")){
validate56.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.check !== undefined){
if(typeof data.check !== "string"){
validate56.errors = [{instancePath:instancePath+"/check",schemaPath:"#/properties/check/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate56.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate56.errors = vErrors;
return errors === 0;
}

export const fettleWorking = validate57;
const schema58 = {"type":"object","properties":{"uri":{"type":"string"},"check":{"type":"string"},"subject":{"type":"string"},"ordinal":{"type":"integer"}},"required":["uri","check","subject","ordinal"]};

function validate57(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if(((((data.uri === undefined) && (missing0 = "uri")) || ((data.check === undefined) && (missing0 = "check"))) || ((data.subject === undefined) && (missing0 = "subject"))) || ((data.ordinal === undefined) && (missing0 = "ordinal"))){
validate57.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.uri !== undefined){
const _errs1 = errors;
if(typeof data.uri !== "string"){
validate57.errors = [{instancePath:instancePath+"/uri",schemaPath:"#/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid0 = _errs1 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.check !== undefined){
const _errs3 = errors;
if(typeof data.check !== "string"){
validate57.errors = [{instancePath:instancePath+"/check",schemaPath:"#/properties/check/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid0 = _errs3 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.subject !== undefined){
const _errs5 = errors;
if(typeof data.subject !== "string"){
validate57.errors = [{instancePath:instancePath+"/subject",schemaPath:"#/properties/subject/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid0 = _errs5 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.ordinal !== undefined){
let data3 = data.ordinal;
const _errs7 = errors;
if(!(((typeof data3 == "number") && (!(data3 % 1) && !isNaN(data3))) && (isFinite(data3)))){
validate57.errors = [{instancePath:instancePath+"/ordinal",schemaPath:"#/properties/ordinal/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
var valid0 = _errs7 === errors;
}
else {
var valid0 = true;
}
}
}
}
}
}
else {
validate57.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate57.errors = vErrors;
return errors === 0;
}

export const fettleSheet = validate58;
const schema59 = {"type":"object","properties":{"textDocument":{"type":"object","properties":{"uri":{"type":"string"}},"required":["uri"]},"have":{"type":"string"},"picturesFirst":{"type":"boolean"}},"required":["textDocument"]};

function validate58(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if((data.textDocument === undefined) && (missing0 = "textDocument")){
validate58.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.textDocument !== undefined){
let data0 = data.textDocument;
const _errs1 = errors;
if(errors === _errs1){
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if((data0.uri === undefined) && (missing1 = "uri")){
validate58.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data0.uri !== undefined){
if(typeof data0.uri !== "string"){
validate58.errors = [{instancePath:instancePath+"/textDocument/uri",schemaPath:"#/properties/textDocument/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate58.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs1 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.have !== undefined){
const _errs5 = errors;
if(typeof data.have !== "string"){
validate58.errors = [{instancePath:instancePath+"/have",schemaPath:"#/properties/have/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid0 = _errs5 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.picturesFirst !== undefined){
const _errs7 = errors;
if(typeof data.picturesFirst !== "boolean"){
validate58.errors = [{instancePath:instancePath+"/picturesFirst",schemaPath:"#/properties/picturesFirst/type",keyword:"type",params:{type: "boolean"},message:"must be boolean"}];
return false;
}
var valid0 = _errs7 === errors;
}
else {
var valid0 = true;
}
}
}
}
}
else {
validate58.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate58.errors = vErrors;
return errors === 0;
}

export const fettleSheetPlace = validate59;
const schema60 = {"type":"object","properties":{"textDocument":{"type":"object","properties":{"uri":{"type":"string"}},"required":["uri"]},"place":{"type":"string"},"definition":{"type":"boolean"}},"required":["textDocument","place"]};

function validate59(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if(((data.textDocument === undefined) && (missing0 = "textDocument")) || ((data.place === undefined) && (missing0 = "place"))){
validate59.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.textDocument !== undefined){
let data0 = data.textDocument;
const _errs1 = errors;
if(errors === _errs1){
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if((data0.uri === undefined) && (missing1 = "uri")){
validate59.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data0.uri !== undefined){
if(typeof data0.uri !== "string"){
validate59.errors = [{instancePath:instancePath+"/textDocument/uri",schemaPath:"#/properties/textDocument/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate59.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs1 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.place !== undefined){
const _errs5 = errors;
if(typeof data.place !== "string"){
validate59.errors = [{instancePath:instancePath+"/place",schemaPath:"#/properties/place/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid0 = _errs5 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.definition !== undefined){
const _errs7 = errors;
if(typeof data.definition !== "boolean"){
validate59.errors = [{instancePath:instancePath+"/definition",schemaPath:"#/properties/definition/type",keyword:"type",params:{type: "boolean"},message:"must be boolean"}];
return false;
}
var valid0 = _errs7 === errors;
}
else {
var valid0 = true;
}
}
}
}
}
else {
validate59.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate59.errors = vErrors;
return errors === 0;
}

export const fettleSheetPlaces = validate60;
const schema61 = {"type":"object","properties":{"textDocument":{"type":"object","properties":{"uri":{"type":"string"}},"required":["uri"]},"position":{"type":"object","properties":{"line":{"type":"integer","minimum":0},"character":{"type":"integer","minimum":0}},"required":["line","character"]},"build":{"type":"string"}},"required":["textDocument","position"]};

function validate60(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if(((data.textDocument === undefined) && (missing0 = "textDocument")) || ((data.position === undefined) && (missing0 = "position"))){
validate60.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.textDocument !== undefined){
let data0 = data.textDocument;
const _errs1 = errors;
if(errors === _errs1){
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if((data0.uri === undefined) && (missing1 = "uri")){
validate60.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data0.uri !== undefined){
if(typeof data0.uri !== "string"){
validate60.errors = [{instancePath:instancePath+"/textDocument/uri",schemaPath:"#/properties/textDocument/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate60.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs1 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.position !== undefined){
let data2 = data.position;
const _errs5 = errors;
if(errors === _errs5){
if(data2 && typeof data2 == "object" && !Array.isArray(data2)){
let missing2;
if(((data2.line === undefined) && (missing2 = "line")) || ((data2.character === undefined) && (missing2 = "character"))){
validate60.errors = [{instancePath:instancePath+"/position",schemaPath:"#/properties/position/required",keyword:"required",params:{missingProperty: missing2},message:"must have required property '"+missing2+"'"}];
return false;
}
else {
if(data2.line !== undefined){
let data3 = data2.line;
const _errs7 = errors;
if(!(((typeof data3 == "number") && (!(data3 % 1) && !isNaN(data3))) && (isFinite(data3)))){
validate60.errors = [{instancePath:instancePath+"/position/line",schemaPath:"#/properties/position/properties/line/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs7){
if((typeof data3 == "number") && (isFinite(data3))){
if(data3 < 0 || isNaN(data3)){
validate60.errors = [{instancePath:instancePath+"/position/line",schemaPath:"#/properties/position/properties/line/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid2 = _errs7 === errors;
}
else {
var valid2 = true;
}
if(valid2){
if(data2.character !== undefined){
let data4 = data2.character;
const _errs9 = errors;
if(!(((typeof data4 == "number") && (!(data4 % 1) && !isNaN(data4))) && (isFinite(data4)))){
validate60.errors = [{instancePath:instancePath+"/position/character",schemaPath:"#/properties/position/properties/character/type",keyword:"type",params:{type: "integer"},message:"must be integer"}];
return false;
}
if(errors === _errs9){
if((typeof data4 == "number") && (isFinite(data4))){
if(data4 < 0 || isNaN(data4)){
validate60.errors = [{instancePath:instancePath+"/position/character",schemaPath:"#/properties/position/properties/character/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"}];
return false;
}
}
}
var valid2 = _errs9 === errors;
}
else {
var valid2 = true;
}
}
}
}
else {
validate60.errors = [{instancePath:instancePath+"/position",schemaPath:"#/properties/position/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs5 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.build !== undefined){
const _errs11 = errors;
if(typeof data.build !== "string"){
validate60.errors = [{instancePath:instancePath+"/build",schemaPath:"#/properties/build/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid0 = _errs11 === errors;
}
else {
var valid0 = true;
}
}
}
}
}
else {
validate60.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate60.errors = vErrors;
return errors === 0;
}

export const fettleSheetFile = validate61;
const schema62 = {"type":"object","properties":{"textDocument":{"type":"object","properties":{"uri":{"type":"string"}},"required":["uri"]},"form":{"enum":["html","markdown"]},"paper":{"enum":["a4","letter"]}},"required":["textDocument","form"]};

function validate61(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if(((data.textDocument === undefined) && (missing0 = "textDocument")) || ((data.form === undefined) && (missing0 = "form"))){
validate61.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.textDocument !== undefined){
let data0 = data.textDocument;
const _errs1 = errors;
if(errors === _errs1){
if(data0 && typeof data0 == "object" && !Array.isArray(data0)){
let missing1;
if((data0.uri === undefined) && (missing1 = "uri")){
validate61.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"}];
return false;
}
else {
if(data0.uri !== undefined){
if(typeof data0.uri !== "string"){
validate61.errors = [{instancePath:instancePath+"/textDocument/uri",schemaPath:"#/properties/textDocument/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
}
}
}
else {
validate61.errors = [{instancePath:instancePath+"/textDocument",schemaPath:"#/properties/textDocument/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
var valid0 = _errs1 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.form !== undefined){
let data2 = data.form;
const _errs5 = errors;
if(!((data2 === "html") || (data2 === "markdown"))){
validate61.errors = [{instancePath:instancePath+"/form",schemaPath:"#/properties/form/enum",keyword:"enum",params:{allowedValues: schema62.properties.form.enum},message:"must be equal to one of the allowed values"}];
return false;
}
var valid0 = _errs5 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.paper !== undefined){
let data3 = data.paper;
const _errs6 = errors;
if(!((data3 === "a4") || (data3 === "letter"))){
validate61.errors = [{instancePath:instancePath+"/paper",schemaPath:"#/properties/paper/enum",keyword:"enum",params:{allowedValues: schema62.properties.paper.enum},message:"must be equal to one of the allowed values"}];
return false;
}
var valid0 = _errs6 === errors;
}
else {
var valid0 = true;
}
}
}
}
}
else {
validate61.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate61.errors = vErrors;
return errors === 0;
}

export const fettleNew = validate62;
const schema63 = {"type":"object","properties":{"near":{"type":"string"},"what":{"type":"string"},"name":{"type":"string"}},"required":["near","what","name"]};

function validate62(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if((((data.near === undefined) && (missing0 = "near")) || ((data.what === undefined) && (missing0 = "what"))) || ((data.name === undefined) && (missing0 = "name"))){
validate62.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.near !== undefined){
const _errs1 = errors;
if(typeof data.near !== "string"){
validate62.errors = [{instancePath:instancePath+"/near",schemaPath:"#/properties/near/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid0 = _errs1 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.what !== undefined){
const _errs3 = errors;
if(typeof data.what !== "string"){
validate62.errors = [{instancePath:instancePath+"/what",schemaPath:"#/properties/what/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid0 = _errs3 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.name !== undefined){
const _errs5 = errors;
if(typeof data.name !== "string"){
validate62.errors = [{instancePath:instancePath+"/name",schemaPath:"#/properties/name/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid0 = _errs5 === errors;
}
else {
var valid0 = true;
}
}
}
}
}
else {
validate62.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate62.errors = vErrors;
return errors === 0;
}

export const fettleDraftPart = validate63;
const schema64 = {"type":"object","properties":{"text":{"type":"string"},"name":{"type":"string"},"kind":{"type":"string"},"variant":{"type":"string"}},"required":["text","name"]};

function validate63(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if(((data.text === undefined) && (missing0 = "text")) || ((data.name === undefined) && (missing0 = "name"))){
validate63.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.text !== undefined){
const _errs1 = errors;
if(typeof data.text !== "string"){
validate63.errors = [{instancePath:instancePath+"/text",schemaPath:"#/properties/text/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid0 = _errs1 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.name !== undefined){
const _errs3 = errors;
if(typeof data.name !== "string"){
validate63.errors = [{instancePath:instancePath+"/name",schemaPath:"#/properties/name/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid0 = _errs3 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.kind !== undefined){
const _errs5 = errors;
if(typeof data.kind !== "string"){
validate63.errors = [{instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid0 = _errs5 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.variant !== undefined){
const _errs7 = errors;
if(typeof data.variant !== "string"){
validate63.errors = [{instancePath:instancePath+"/variant",schemaPath:"#/properties/variant/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid0 = _errs7 === errors;
}
else {
var valid0 = true;
}
}
}
}
}
}
else {
validate63.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate63.errors = vErrors;
return errors === 0;
}

export const fettlePartPlace = validate64;
const schema65 = {"type":"object","properties":{"near":{"type":"string"},"name":{"type":"string"}},"required":["near","name"]};

function validate64(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if(((data.near === undefined) && (missing0 = "near")) || ((data.name === undefined) && (missing0 = "name"))){
validate64.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.near !== undefined){
const _errs1 = errors;
if(typeof data.near !== "string"){
validate64.errors = [{instancePath:instancePath+"/near",schemaPath:"#/properties/near/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid0 = _errs1 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.name !== undefined){
const _errs3 = errors;
if(typeof data.name !== "string"){
validate64.errors = [{instancePath:instancePath+"/name",schemaPath:"#/properties/name/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid0 = _errs3 === errors;
}
else {
var valid0 = true;
}
}
}
}
else {
validate64.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate64.errors = vErrors;
return errors === 0;
}

export const fettleCursor = validate65;
const schema66 = {"type":"object","properties":{"uri":{"type":"string"},"position":{"anyOf":[{"type":"null"},{"type":"object","properties":{"line":{"type":"integer","minimum":0},"character":{"type":"integer","minimum":0}},"required":["line","character"]}]}},"required":["uri","position"]};

function validate65(data, {instancePath="", parentData, parentDataProperty, rootData=data}={}){
let vErrors = null;
let errors = 0;
if(errors === 0){
if(data && typeof data == "object" && !Array.isArray(data)){
let missing0;
if(((data.uri === undefined) && (missing0 = "uri")) || ((data.position === undefined) && (missing0 = "position"))){
validate65.errors = [{instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: missing0},message:"must have required property '"+missing0+"'"}];
return false;
}
else {
if(data.uri !== undefined){
const _errs1 = errors;
if(typeof data.uri !== "string"){
validate65.errors = [{instancePath:instancePath+"/uri",schemaPath:"#/properties/uri/type",keyword:"type",params:{type: "string"},message:"must be string"}];
return false;
}
var valid0 = _errs1 === errors;
}
else {
var valid0 = true;
}
if(valid0){
if(data.position !== undefined){
let data1 = data.position;
const _errs3 = errors;
const _errs4 = errors;
let valid1 = false;
const _errs5 = errors;
if(data1 !== null){
const err0 = {instancePath:instancePath+"/position",schemaPath:"#/properties/position/anyOf/0/type",keyword:"type",params:{type: "null"},message:"must be null"};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
var _valid0 = _errs5 === errors;
valid1 = valid1 || _valid0;
if(!valid1){
const _errs7 = errors;
if(errors === _errs7){
if(data1 && typeof data1 == "object" && !Array.isArray(data1)){
let missing1;
if(((data1.line === undefined) && (missing1 = "line")) || ((data1.character === undefined) && (missing1 = "character"))){
const err1 = {instancePath:instancePath+"/position",schemaPath:"#/properties/position/anyOf/1/required",keyword:"required",params:{missingProperty: missing1},message:"must have required property '"+missing1+"'"};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
else {
if(data1.line !== undefined){
let data2 = data1.line;
const _errs9 = errors;
if(!(((typeof data2 == "number") && (!(data2 % 1) && !isNaN(data2))) && (isFinite(data2)))){
const err2 = {instancePath:instancePath+"/position/line",schemaPath:"#/properties/position/anyOf/1/properties/line/type",keyword:"type",params:{type: "integer"},message:"must be integer"};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
if(errors === _errs9){
if((typeof data2 == "number") && (isFinite(data2))){
if(data2 < 0 || isNaN(data2)){
const err3 = {instancePath:instancePath+"/position/line",schemaPath:"#/properties/position/anyOf/1/properties/line/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
var valid2 = _errs9 === errors;
}
else {
var valid2 = true;
}
if(valid2){
if(data1.character !== undefined){
let data3 = data1.character;
const _errs11 = errors;
if(!(((typeof data3 == "number") && (!(data3 % 1) && !isNaN(data3))) && (isFinite(data3)))){
const err4 = {instancePath:instancePath+"/position/character",schemaPath:"#/properties/position/anyOf/1/properties/character/type",keyword:"type",params:{type: "integer"},message:"must be integer"};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
if(errors === _errs11){
if((typeof data3 == "number") && (isFinite(data3))){
if(data3 < 0 || isNaN(data3)){
const err5 = {instancePath:instancePath+"/position/character",schemaPath:"#/properties/position/anyOf/1/properties/character/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0},message:"must be >= 0"};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
}
var valid2 = _errs11 === errors;
}
else {
var valid2 = true;
}
}
}
}
else {
const err6 = {instancePath:instancePath+"/position",schemaPath:"#/properties/position/anyOf/1/type",keyword:"type",params:{type: "object"},message:"must be object"};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
var _valid0 = _errs7 === errors;
valid1 = valid1 || _valid0;
}
if(!valid1){
const err7 = {instancePath:instancePath+"/position",schemaPath:"#/properties/position/anyOf",keyword:"anyOf",params:{},message:"must match a schema in anyOf"};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
validate65.errors = vErrors;
return false;
}
else {
errors = _errs4;
if(vErrors !== null){
if(_errs4){
vErrors.length = _errs4;
}
else {
vErrors = null;
}
}
}
var valid0 = _errs3 === errors;
}
else {
var valid0 = true;
}
}
}
}
else {
validate65.errors = [{instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"},message:"must be object"}];
return false;
}
}
validate65.errors = vErrors;
return errors === 0;
}

export const byMethod = {
  __proto__: null,
  'initialize': initialize,
  'textDocument/didOpen': textDocumentDidOpen,
  'textDocument/didChange': textDocumentDidChange,
  'textDocument/didClose': textDocumentDidClose,
  'textDocument/willSave': textDocumentWillSave,
  'textDocument/didSave': textDocumentDidSave,
  'workspace/didChangeWatchedFiles': workspaceDidChangeWatchedFiles,
  'workspace/didChangeConfiguration': workspaceDidChangeConfiguration,
  'workspace/didChangeWorkspaceFolders': workspaceDidChangeWorkspaceFolders,
  '$/cancelRequest': CancelRequest,
  '$/setTrace': SetTrace,
  'window/workDoneProgress/cancel': windowWorkDoneProgressCancel,
  'textDocument/hover': textDocumentHover,
  'textDocument/definition': textDocumentDefinition,
  'textDocument/references': textDocumentReferences,
  'textDocument/documentHighlight': textDocumentDocumentHighlight,
  'textDocument/prepareRename': textDocumentPrepareRename,
  'textDocument/rename': textDocumentRename,
  'textDocument/foldingRange': textDocumentFoldingRange,
  'textDocument/selectionRange': textDocumentSelectionRange,
  'textDocument/documentLink': textDocumentDocumentLink,
  'textDocument/prepareCallHierarchy': textDocumentPrepareCallHierarchy,
  'callHierarchy/incomingCalls': callHierarchyIncomingCalls,
  'callHierarchy/outgoingCalls': callHierarchyOutgoingCalls,
  'workspace/symbol': workspaceSymbol,
  'textDocument/inlayHint': textDocumentInlayHint,
  'inlayHint/resolve': inlayHintResolve,
  'textDocument/codeLens': textDocumentCodeLens,
  'codeLens/resolve': codeLensResolve,
  'workspace/willRenameFiles': workspaceWillRenameFiles,
  'workspace/didRenameFiles': workspaceDidRenameFiles,
  'textDocument/formatting': textDocumentFormatting,
  'textDocument/onTypeFormatting': textDocumentOnTypeFormatting,
  'textDocument/completion': textDocumentCompletion,
  'completionItem/resolve': completionItemResolve,
  'textDocument/documentSymbol': textDocumentDocumentSymbol,
  'textDocument/codeAction': textDocumentCodeAction,
  'codeAction/resolve': codeActionResolve,
  'textDocument/diagnostic': textDocumentDiagnostic,
  'workspace/diagnostic': workspaceDiagnostic,
  'workspace/executeCommand': workspaceExecuteCommand,
  'fettle/explain': fettleExplain,
  'fettle/working': fettleWorking,
  'fettle/sheet': fettleSheet,
  'fettle/sheetPlace': fettleSheetPlace,
  'fettle/sheetPlaces': fettleSheetPlaces,
  'fettle/sheetFile': fettleSheetFile,
  'fettle/new': fettleNew,
  'fettle/draftPart': fettleDraftPart,
  'fettle/partPlace': fettlePartPlace,
  'fettle/cursor': fettleCursor,
};
