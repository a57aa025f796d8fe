/**
 * The crop table, a row a line; a range is written `18..48`, what is not known `-`. Inches unless the heading says
 * otherwise. Where each column comes from stands in `CROP_SOURCES`.
 *
 * id | name | botanical | family | season | sow | sun | root class | root depth | root zone, m | least bed depth over
 * soil | in the row | between rows | source of both | spacing in beds | support | its height, ft | mature height |
 * its source | days to maturity | their source
 */
export const CROP_ROWS = `
tomato | Tomato | Solanum lycopersicum | Solanaceae | warm | transplant | full | deep | 18..48 | 0.7..1.5 | 12 | 18..36 | 24..48 | UME | 18..24 | cage/stake/trellis | 5..6.6 | 36..84 | CP | 60..85 | CP
pepper | Pepper (sweet/hot) | Capsicum annuum | Solanaceae | warm | transplant | full | medium | 36..48 | 0.5..1 | 10 | 18 | 18..24 | UME | 12..15 | stake (optional) | 2..3 | 18..36 | CP | 60..90 | CP
eggplant | Eggplant | Solanum melongena | Solanaceae | warm | transplant | full | medium | 36..48 | 0.7..1.2 | 10 | 18 | 24..36 | UME | 18..24 | stake (optional) | 2..3 | 24..48 | CP | 65..85 | CP
potato | Potato | Solanum tuberosum | Solanaceae | cool | seed tubers | full | shallow | 18..24 | 0.4..0.6 | 12 | 8..12 | 30..36 | UME | 10..12 | none | - | 18..36 | CP | 70..120 | CP
bean-bush | Bean, snap bush | Phaseolus vulgaris | Fabaceae | warm | direct | full | medium | 24..36 | 0.5..0.7 | 8 | 2..4 | 24 | UME | 4..6 | none | - | 12..24 | CP | 50..60 | CP
bean-pole | Bean, snap pole | Phaseolus vulgaris | Fabaceae | warm | direct | full | medium | 24..36 | 0.5..0.7 | 8 | 24 | 36 | UME-hills | 6..12 | trellis/poles | 6..8 | 60..96 | CP | 60..75 | CP
bean-lima | Bean, lima | Phaseolus lunatus | Fabaceae | warm | direct | full | deep | 24..36 | 0.8..1.2 | 10 | - | - | - | 4..6 | bush none / pole trellis | 6..8 | 18..96 | CP | 65..90 | CP
pea | Pea | Pisum sativum | Fabaceae | cool | direct | full/part | medium | 36..48 | 0.6..1 | 8 | 1..2 | 18..36 | UME | 2..4 | trellis/netting | 3..6 | 18..72 | CP | 55..70 | CP
corn-sweet | Sweet corn | Zea mays | Poaceae | warm | direct | full | shallow | 18..36 | 0.8..1.2 | 12 | 6..8 | 24..36 | UME | 15..18 | none (block planting) | - | 60..96 | CP | 65..95 | CP
cucumber | Cucumber | Cucumis sativus | Cucurbitaceae | warm | either | full | medium | 36..48 | 0.7..1.2 | 10 | 48 | 48..72 | UME-hills | 12..18 | trellis (recommended) | 4..6 | 12..72 | CP | 50..70 | CP
squash-summer | Summer squash / zucchini | Cucurbita pepo | Cucurbitaceae | warm | either | full | medium | 12..18 | 0.6..1 | 10 | 48 | 36 | UME-hills | 18..24 | none | - | 24..36 | CP | 45..60 | CP
squash-winter | Winter squash | Cucurbita maxima / moschata | Cucurbitaceae | warm | either | full | deep | 12..24 | 1..1.5 | 12 | 72 | 72..96 | UME-hills | 24..36 | optional strong trellis | 5..6 | 18..24 | CP | 80..120 | CP
pumpkin | Pumpkin | Cucurbita pepo | Cucurbitaceae | warm | either | full | deep | - | 1..1.5 | 12 | 48 | 36 | UME-hills | 24..36 | none | - | 18..24 | CP | 90..120 | CP
cantaloupe | Cantaloupe / muskmelon | Cucumis melo | Cucurbitaceae | warm | either | full | medium | - | 0.9..1.5 | 12 | - | - | - | 18..24 | optional trellis with slings | 5..6 | 12..24 | CP | 75..100 | CP
watermelon | Watermelon | Citrullus lanatus | Cucurbitaceae | warm | either | full | deep | - | 0.8..1.5 | 12 | - | - | - | 24..36 | none | - | 12..24 | CP | 75..100 | CP
carrot | Carrot | Daucus carota | Apiaceae | cool | direct | full/part | medium | 18..24 | 0.5..1 | 10 | 2..3 | 12..18 | UME | 2..3 | none | - | 10..15 | CP | 60..80 | CP
beet | Beet | Beta vulgaris | Amaranthaceae | cool | direct | full/part | medium | 18..36 | 0.6..1 | 8 | 2..3 | 12..18 | UME | 2..4 | none | - | 12..18 | CP | 50..65 | CP
radish | Radish | Raphanus sativus | Brassicaceae | cool | direct | full/part | shallow | 5..8 | 0.3..0.5 | 6 | - | - | - | 2..3 | none | - | 6..12 | CP | 22..35 | CP
turnip | Turnip | Brassica rapa | Brassicaceae | cool | direct | full/part | medium | 18..24 | 0.5..1 | 8 | 1 | 12..18 | UME | 4..6 | none | - | 12..18 | CP | 40..60 | CP
rutabaga | Rutabaga | Brassica napus | Brassicaceae | cool | direct | full/part | medium | 24..36 | 0.5..1 | 10 | - | - | - | 4..6 | none | - | 12..24 | CP | 80..100 | CP
parsnip | Parsnip | Pastinaca sativa | Apiaceae | cool | direct | full/part | deep | 48 | 0.5..1 | 12 | 2..4 | 18..24 | UME | - | none | - | 12..18 | CP | 100..130 | CP
onion-bulb | Onion, bulb | Allium cepa | Amaryllidaceae | cool | sets/transplant | full | shallow | 8..12 | 0.3..0.6 | 6 | 1..3 | 12..18 | UME | 2..4 | none | - | 12..24 | CP | 90..120 | CP
onion-green | Onion, green (scallion) | Allium fistulosum / A. cepa | Amaryllidaceae | cool | either | full/part | shallow | 8..12 | 0.3..0.6 | 6 | - | - | - | 2..4 | none | - | 12..18 | CP | 50..70 | CP
garlic | Garlic | Allium sativum | Amaryllidaceae | cool | cloves | full | shallow | 12..18 | 0.3..0.5 | 8 | 6 | - | TXW | - | none | - | 24 | TXW | 240..270 | CP
leek | Leek | Allium ampeloprasum | Amaryllidaceae | cool | transplant | full/part | shallow | 18..36 | - | 8 | - | - | - | 3..6 | none | - | 18..30 | CP | 100..130 | CP
lettuce-leaf | Lettuce, leaf | Lactuca sativa | Asteraceae | cool | either | part | shallow | 18 | 0.3..0.5 | 6 | - | - | - | 4..6 | none | - | 6..12 | CP | 40..55 | CP
lettuce-head | Lettuce, head | Lactuca sativa | Asteraceae | cool | transplant | part | shallow | 18 | 0.3..0.5 | 6 | - | - | - | 10..12 | none | - | 6..12 | CP | 65..85 | CP
spinach | Spinach | Spinacia oleracea | Amaranthaceae | cool | direct | part | shallow | 12..18 | 0.3..0.5 | 6 | 3..4 | 12..18 | UME | 4..6 | none | - | 6..12 | CP | 40..50 | CP
chard | Swiss chard | Beta vulgaris subsp. cicla | Amaranthaceae | cool | either | part | medium | 36..48 | - | 8 | - | - | - | 6..9 | none | - | 18..24 | CP | 50..60 | CP
kale | Kale | Brassica oleracea (Acephala) | Brassicaceae | cool | either | part | medium | 12..18 | - | 8 | 12..15 | 18..36 | TSU | 15..18 | none | - | 18..36 | CP | 55..65 | TSU
collards | Collards | Brassica oleracea (Acephala) | Brassicaceae | cool | either | part | shallow | 18..24 | - | 8 | 18 | 18..36 | TSU | 12..15 | none | - | 24..36 | CP | 65..75 | TSU
mustard | Mustard greens | Brassica juncea | Brassicaceae | cool | direct | part | shallow | 18 | - | 6 | 5..10 | 14..36 | TSU | 6..9 | none | - | 12..24 | CP | 35..45 | TSU
arugula | Arugula | Eruca vesicaria | Brassicaceae | cool | direct | part | shallow | 12..18 | - | 6 | - | - | - | - | none | - | 8..12 | CP | 35..50 | CP
cabbage | Cabbage | Brassica oleracea (Capitata) | Brassicaceae | cool | transplant | full/part | shallow | 12 | 0.5..0.8 | 8 | 12..18 | 24..36 | UME | 15..18 | none | - | 12..18 | CP | 65..95 | CP
cabbage-chinese | Chinese cabbage / bok choy | Brassica rapa | Brassicaceae | cool | either | part | shallow | 12..36 | - | 8 | 12 | 24..36 | TSU | 10..12 | none | - | 12..18 | CP | 40..50 | TSU
broccoli | Broccoli | Brassica oleracea (Italica) | Brassicaceae | cool | transplant | full/part | shallow | 18..36 | 0.4..0.6 | 8 | 24..30 | 24..36 | UME | 12..18 | none | - | 18..30 | CP | 60..80 | CP
cauliflower | Cauliflower | Brassica oleracea (Botrytis) | Brassicaceae | cool | transplant | full | shallow | 18..36 | 0.4..0.7 | 8 | 18 | 24..36 | TSU | 15..18 | none | - | 18..30 | CP | 55..65 | TSU
brussels-sprouts | Brussels sprouts | Brassica oleracea (Gemmifera) | Brassicaceae | cool | transplant | full | shallow | 18..36 | 0.4..0.6 | 10 | - | - | - | 15..18 | stake if windy | 2..3 | 24..36 | CP | 90..120 | CP
kohlrabi | Kohlrabi | Brassica oleracea (Gongylodes) | Brassicaceae | cool | either | full/part | shallow | 12..18 | - | 6 | 3..6 | 14..36 | TSU | 6..9 | none | - | 9..12 | CP | 40..50 | TSU
celery | Celery | Apium graveolens | Apiaceae | cool | transplant | full/part | shallow | 18..36 | 0.3..0.5 | 8 | - | - | - | - | none | - | 12..24 | CP | 85..120 | CP
okra | Okra | Abelmoschus esculentus | Malvaceae | warm | direct | full | deep | - | - | 12 | - | - | - | 12..18 | none | - | 36..72 | CP | 50..65 | CP
sweet-potato | Sweet potato | Ipomoea batatas | Convolvulaceae | warm | slips | full | deep | - | 1..1.5 | 12 | - | - | - | - | none | - | 12..18 | CP | 90..120 | CP
asparagus | Asparagus (perennial) | Asparagus officinalis | Asparagaceae | cool | crowns | full | deep | - | 1.2..1.8 | 18 | 18 | 36..48 | UME | 15..18 | none | - | 48..72 | CP | 730..1095 | CP
strawberry | Strawberry (perennial) | Fragaria x ananassa | Rosaceae | cool | plants | full | shallow | 12..18 | 0.2..0.3 | 8 | - | - | - | - | none | - | 6..12 | CP | 60..365 | CP
basil | Basil | Ocimum basilicum | Lamiaceae | warm | either | full | shallow | 8..12 | - | 6 | 12..18 | - | TXW | - | none | - | 20..24 | TXW | 50..75 | CP
parsley | Parsley | Petroselinum crispum | Apiaceae | cool | either | part | shallow | 8..12 | - | 6 | 6 | - | TXW | - | none | - | 10..15 | TXW | 70..90 | CP
cilantro | Cilantro / coriander | Coriandrum sativum | Apiaceae | cool | direct | part | shallow | 8..18 | - | 6 | 12 | - | TXW | - | none | - | 24 | TXW | 45..70 | CP
dill | Dill | Anethum graveolens | Apiaceae | cool | direct | full | shallow | - | - | 8 | 12 | - | TXW | - | none | - | 24..36 | TXW | 40..60 | CP
fennel | Fennel | Foeniculum vulgare | Apiaceae | cool | direct | full | shallow | 12..18 | - | 10 | 18 | - | TXW | - | none | - | 60 | TXW | 65..90 | CP
chives | Chives (perennial) | Allium schoenoprasum | Amaryllidaceae | cool | either | part | shallow | 3..6 | - | 6 | 6 | - | TXW | - | none | - | 12 | TXW | 75..90 | CP
thyme | Thyme (perennial) | Thymus vulgaris | Lamiaceae | warm | transplant | full | shallow | 6..10 | - | 6 | 18 | - | TXW | - | none | - | 6..12 | TXW | 70..90 | CP
oregano | Oregano (perennial) | Origanum vulgare | Lamiaceae | warm | transplant | full | shallow | 6..18 | - | 6 | 18 | - | TXW | - | none | - | 18 | TXW | 80..90 | CP
sage | Sage (perennial) | Salvia officinalis | Lamiaceae | warm | transplant | full | medium | 24..36 | - | 8 | 24 | - | TXW | - | none | - | 18 | TXW | 75..90 | CP
rosemary | Rosemary (perennial) | Salvia rosmarinus | Lamiaceae | warm | transplant | full | medium | 12..24 | - | 10 | 24 | - | TXW | - | none | - | 36..60 | TXW | 80..365 | CP
mint | Mint (perennial) | Mentha spp. | Lamiaceae | cool | divisions | part | shallow | 12..18 | 0.4..0.8 | 8 | 24 | - | TXW | - | none (contain roots) | - | 12 | TXW | 60..90 | CP
`;
