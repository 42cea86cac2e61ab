// What data sheets in Portuguese, Spanish and Indonesian call the facts, put behind the English and German labels.
// Source: common practice, counted over data sheets.
import type { Labels } from './labelled';

const FORM = 'Formato | Fator de forma | Factor de forma | Faktor bentuk';
const MEASURES = 'Dimensões | Dimensiones | Dimensi';
const CAPACITY = 'Capacidade | Capacidad | Kapasitas';

const any: Labels = {
  maker: 'Marca | Fabricante | Merek',
  model: 'Modelo | Nome do modelo | Nombre del modelo | Nama model',
  mass: 'Peso | Peso líquido | Peso neto | Berat | Berat bersih',
};

const SYSTEM_MEMORY = 'Memória | Memoria | Memori';
const board: Labels = {
  size: FORM,
  width: `${FORM} | ${MEASURES}`,
  depth: `${FORM} | ${MEASURES}`,
  socket: 'Soquete | Zócalo | Soket | Processador | Procesador | Prosesor',
  processors: 'Processador | Processadores | Procesador | Procesadores | Prosesor',
  'memory.type': SYSTEM_MEMORY,
  'memory.shape': SYSTEM_MEMORY,
  'memory.module': SYSTEM_MEMORY,
  'memory.ecc': SYSTEM_MEMORY,
  'memory.most': `${SYSTEM_MEMORY} | Memória máxima | Memoria máxima | Memori maksimum`,
  slots:
    'Slots de expansão | Ranuras de expansión | Slot ekspansi | Armazenamento | Almacenamiento | Penyimpanan | ' +
    'Slots M.2 | Ranuras M.2 | Slot M.2',
  ports: 'Armazenamento | Almacenamiento | Penyimpanan | Portas SATA | Puertos SATA | Port SATA',
  'display-outputs': 'Gráficos | Gráficos integrados | Painel traseiro | Panel trasero | Grafis',
  headers: 'Conectores internos | Konektor internal',
  'power-connectors': 'Conectores internos | Alimentação | Alimentación | Konektor internal',
};

const processor: Labels = {
  socket: 'Soquete | Zócalo | Soket',
  'power.sustained': 'Potência base | Potencia base | Daya dasar',
  'power.peak': 'Potência turbo máxima | Potencia turbo máxima',
  hottest: 'Temperatura máxima | Suhu maksimum',
  graphics: 'Gráficos integrados | Gráficos | Grafis terintegrasi | Grafis',
  'memory.types': 'Tipos de memória | Tipos de memoria | Tipo de memória | Tipo de memoria | Tipe memori',
  'memory.channels': 'Canais de memória | Canales de memoria | Saluran memori',
  'memory.most': 'Memória máxima | Memoria máxima | Memori maksimum',
  'memory.ecc': 'Memória ECC | Memoria ECC',
};

const SPEED = 'Velocidade | Velocidad | Kecepatan';
const CONNECTOR = 'Conector | Konektor';
const fanParts: Labels = {
  size: `${MEASURES} | Tamanho | Tamaño | Ukuran`,
  thickness: `${MEASURES} | Espessura | Espesor`,
  pins: CONNECTOR,
  current: 'Corrente nominal | Corriente nominal | Corrente | Corriente | Arus',
  speed: `${SPEED} | Velocidade de rotação | Velocidad de rotación | Kecepatan putaran`,
  airflow: 'Fluxo de ar | Flujo de aire | Caudal de aire | Aliran udara',
  pressure: 'Pressão estática | Presión estática | Tekanan statis | Pressão do ar | Presión de aire',
  level: 'Nível de ruído | Nivel de ruido | Ruído | Ruido | Tingkat kebisingan | Kebisingan',
};
const fan: Labels = {
  ...fanParts,
  'draw.peak': 'Consumo de energia | Consumo de energía | Consumo | Konsumsi daya',
};

const cooler: Labels = {
  sockets:
    'Soquete | Soquetes | Zócalo | Zócalos | Soket | Compatibilidade | Compatibilidad | Soquetes compatíveis | ' +
    'Zócalos compatibles',
  height: `Altura | Altura total | Tinggi | ${MEASURES}`,
  base: 'Material da base | Material de la base | Material dasar',
  fans: 'Ventoinha | Ventoinhas | Ventilador | Ventiladores | Kipas',
  ...Object.fromEntries(Object.entries(fanParts).map(([path, words]) => [`fans.${path}`, words])),
  'fans.count': 'Quantidade | Cantidad | Jumlah',
  'radiator.length': MEASURES,
  'radiator.width': MEASURES,
  'radiator.thickness': MEASURES,
  'tube-length': 'Comprimento do tubo | Longitud del tubo | Panjang selang',
};

const memory: Labels = {
  type: 'Tipo de memória | Tipo de memoria | Tipe memori | Tipo | Tipe',
  shape: `${FORM} | Tipo de módulo | Tipe modul`,
  class: 'Tipo de módulo | Tipe modul | Registrada / sin búfer | Registrada / sem buffer',
  ecc: 'Correção de erros | Corrección de errores',
  capacity: `${CAPACITY} | Capacidade total | Capacidad total`,
  'modules-in-kit': `${CAPACITY} | Capacidade total | Capacidad total`,
  'rated-speed':
    `${SPEED} | Frequência | Frecuencia | Frekuensi | Velocidade testada | Velocidad probada | ` + 'Kecepatan teruji',
  'standard-speed': 'Velocidade SPD | Velocidad SPD | Kecepatan SPD',
  voltage: 'Tensão | Tensión | Voltagem | Voltaje | Tegangan | Tensão testada | Voltaje probado',
  height: 'Altura | Tinggi',
};

const drive: Labels = {
  bus: 'Interfaz | Antarmuka',
  link: 'Interfaz | Antarmuka',
  shape: FORM,
  size: FORM,
  thickness: `${MEASURES} | Espessura | Espesor | Ketebalan`,
  capacity: CAPACITY,
  read:
    'Leitura sequencial | Lectura secuencial | Velocidade de leitura | Velocidad de lectura | Kecepatan baca | ' +
    'Baca sekuensial',
  write:
    'Gravação sequencial | Escrita sequencial | Escritura secuencial | Velocidade de gravação | ' +
    'Velocidade de escrita | Velocidad de escritura | Kecepatan tulis | Tulis sekuensial',
  endurance: 'Durabilidade (TBW) | Resistencia (TBW) | Daya tahan (TBW) | Ketahanan (TBW)',
  hottest:
    'Temperatura de operação | Temperatura de funcionamiento | Temperatura operativa | Suhu operasi | ' +
    'Suhu pengoperasian',
};

const card: Labels = {
  link: 'Interfaz | Antarmuka | Barramento',
  length: `${MEASURES} | Comprimento | Longitud | Panjang`,
  height: MEASURES,
  thickness: MEASURES,
  openings: 'Largura | Anchura | Lebar',
  'power.sustained': 'Consumo de energia | Consumo de energía | Consumo | Konsumsi daya',
  connectors:
    'Conectores de energia | Conector de energia | Conectores de alimentación | Conector de alimentación | ' +
    'Conectores de alimentação | Konektor daya | Conectores',
  outputs: 'Saídas | Saídas de vídeo | Salidas | Salidas de vídeo | Salidas de video | Keluaran',
};

const supply: Labels = {
  rating: 'Potência | Potencia | Potência nominal | Potencia nominal | Potência total | Potencia total | Daya',
  form: `${FORM} | Tipo`,
  depth: MEASURES,
  badge: 'Certificação | Certificación | Classificação | Eficiência | Eficiencia | Sertifikasi | Efisiensi',
  standard: 'Padrão | Estándar',
  connectors: 'Conectores | Konektor',
  'inlet.lowest': 'Tensão de entrada | Tensión de entrada | Voltaje de entrada | Entrada CA | Tegangan masukan',
  'inlet.highest': 'Tensão de entrada | Tensión de entrada | Voltaje de entrada | Entrada CA | Tegangan masukan',
  'power-factor': 'Correção PF | Correção do fator de potência | Corrección del factor de potencia',
};

const pcCase: Labels = {
  'board-sizes':
    'Placa-mãe | Placas-mãe | Compatibilidade de placa-mãe | Placa base | Placas base | ' +
    'Compatibilidad con placas base | Placas base compatibles | Motherboard yang didukung',
  'cooler-height':
    'Altura máxima do cooler | Altura máxima do cooler da CPU | Altura máxima del disipador | ' +
    'Altura máxima del disipador de CPU | Tinggi maksimum pendingin CPU',
  'card-length':
    'Comprimento máximo da GPU | Comprimento máximo da placa de vídeo | Longitud máxima de GPU | ' +
    'Longitud máxima de la GPU | Longitud máxima de la tarjeta gráfica | Panjang maksimum GPU',
  'supply-depth': 'Comprimento máximo da fonte | Longitud máxima de la fuente | Panjang maksimum PSU',
  'supply-forms': 'Fonte | Fonte de alimentação | Fuente | Fuente de alimentación',
  openings: 'Slots de expansão | Ranuras de expansión | Slot ekspansi',
  bays: 'Baias | Baias de unidade | Bahías | Bahías de unidades',
  'fan-places': 'Ventoinhas | Suporte para ventoinhas | Ventiladores | Soporte de ventiladores | Dukungan kipas',
  'radiator-places': 'Suporte para radiador | Radiadores | Soporte de radiador | Dukungan radiator',
  'front-cables': 'Portas frontais | Puertos frontales | Painel frontal | Panel frontal | Port depan',
  'glass-panel': 'Painel lateral | Panel lateral | Panel samping',
};

const display: Labels = {
  modes: 'Resolução | Resolución | Resolusi | Resolução nativa | Resolución nativa',
  inputs: 'Entradas | Conectores | Conectividade | Conectividad | Konektivitas',
  'draw.typical':
    'Consumo de energia | Consumo de energía | Consumo típico | Consumo de energia (típico) | ' +
    'Consumo de energía (típico) | Konsumsi daya | Konsumsi daya (tipikal)',
  'draw.peak':
    'Consumo máximo | Consumo de energia (máx.) | Consumo de energía (máx.) | Konsumsi daya (maks.) | ' +
    'Consumo de energia (máximo) | Consumo de energía (máximo)',
  mass: 'Peso com base | Peso con base | Peso con soporte | Peso com suporte',
};

const OTHERS: Readonly<Partial<Record<string, Labels>>> = {
  board,
  processor,
  cooler,
  memory,
  drive,
  graphics: card,
  card,
  supply,
  case: pcCase,
  fan,
  display,
};

/** The labels of a kind of part with those of the other languages behind them. */
export function inOtherLanguages(kind: string, labels: Labels): Labels {
  const all = { ...labels };
  for (const [path, words] of [...Object.entries(any), ...Object.entries(OTHERS[kind] ?? {})]) {
    const own = all[path]?.split(' | ') ?? [];
    all[path] = [...new Set([...own, ...words.split(' | ')])].join(' | ');
  }
  return all;
}
