// Made by build/learn-sayings from tests/sayings; see DEVELOPERS.md. Not to be edited.
// clang-format off
#include "talk/evidence.hpp"

namespace nutward::talk {

std::string_view learnt_table() {
  static constexpr const char* pieces[] = {
R"~(fit place shift all-right slots cuts cut-list labels stock supply order-list due jobs job persons whose press level suits lots balance saved tin-care held spring-back machines bookings stages hours agenda promise orders suppliers history not-understood help use hold let-go add scrap measured came-short finished pressed rechecked new-job set-due cancel-job define-wire receive reorder-level open-hours close-day open-extra set add-receiver drop-receiver new-person map-uid unmap-uid change-person retire-person return-person give-job free-job count weigh calibrate correct cut-from cut-new pulled from-lot slot-size shifted board-width lost remade handful measured-handful scrap-several use-several set-aside let-all-go define-bar drop-bar press-support wire-size reading crown-gap cause stands-low last-fret neck reseated glued levelled define-machine change-machine drop-machine machine-down machine-up stage-machine stage-minutes book cancel-booking start stop own-hours day-off day-on reopen-day priority after look-again ordered arrived order-promised cancel-order define-supplier change-supplier drop-supplier forget-not-understood undo -
$words	a about abraded abrasive acceptable according account across action add additional address advise advised after afternoon again against agenda ago ahead ai all allowed alone along already also although altogether always am amend an and anew annual annulled another answer any anybody anymore anyone anything anyway anywhere apiece applied apply appropriate arbor archive are around arrive arrived as aside ask asked asking assigned at attributable audit available average away back bad bag balance bandsaws banjaxed bank bar barbs bare bars batch be beacon became because become becomes been before begin begun behind being believe bell belong belongs below belt bend bender bending beneath bent best better between beyond big bin binding binned bins bit bits bless block board body bodyward book booked booking bookings books booth boss both bother bottom bottomed bottoms bought bound box boxes brand breadth break bridging bring broke broken brought buffer building bunch business busy but buy by cake calibrate caliper calipers call called callipers calls came can cancel cancelled cancels care carried carry caul cause change changed check checked christmas chuck chucked cittern clamp clamped clean cleaned cleaning clear clock close closed closing closure cloudevents cm coffee coil coils colleague come comes coming command commenced commit complete completed completely completion compound computer concerning confirm considered copper corners correct cost costs could count counted counting counts cousin cracked cradle cradled create crown crowning crowns current currently curved customer customers cut cuts cutting date dates daughters day days dead deadline deadlines dec december deep deeper define definitively delete deliver delivered deliveries delivery dentist depth designated desk determined devil did dimensions dirt dirty discarded dispose distance divided division do does doing done door doors down drawer drawers dressed dressing drill drop dropped drops dry due dulcimer duration dust e e'er each earlier earliest early eat edda edge edges else elsewhere em employed empty end ended ends enough enter entered entirely entry equipment error established eur europe euros eve even evening ever every everybody everyone everything exactly example exceptionally exist existing expected explain extra eye fair fall falling falls fanned far favour feeler feet fell fella ferro fetch few fewer fewest figure file filed filing filled final finally find fine fingerboard finished firewood firm fit fixed fixing flat floor folks following fool foot for forever forget fortnight forward found free fresh fret frets fretted fretting fretwire fri friday fridays from ft full function furnisher further g gander gap gauge gave get gets getting gig give given gives glue glued go goes going gone gong gonna good goods got grab grabs gram grams grand greta grip groove grooves gross ground group guitars had hair half hammer hand handful hands hang happened happens harbour hard hardly has have having he head hear height held help henceforth her here hereby hers high higher highs him himself hired his history hitting hold holding holds holiday holidays hollow home hook hour hours house how how'd http https humidity hump hundredths hurry hurts i i'd i've identify idle if ill in inch inches included including inspection instead instructions instrument interrupted into inventory is it item items its january jig job jobs jointer joke jumbo just k keep keeping keeps kept kettle kg kill kind kindly kinked kitchen klara knock know knows labels lack lacks lady laid lamp landed lane laptop large last lasts late later latest lay lb lead leaks least leave leaving left leftover leftovers length lengths less let level levelled levelling lick lie lies lift lifted light like limit lindwurm line list listens little load loads log login logs long longer look looked looking looks loose loss lost lot lots love lovely low lower lows lunch lying m machine machines made make makes making man manner many maple mark marks married mass match mate matej material materials matter may maybe me mean meant measure measured measures measuring member metal metals metre metres mic'd micrometer middle might mil millimetre millimetres mind mine mini minimum minute minutes mirjam miscounted missing mistake mm moment mon monday mondays money month more morning morrow most move moved mr ms much must my myself name named namely near nearly necessary neck necks need needing needs neighbours never new newly news next nice nickel night nip nipped nipping no nobody none noon normal not note nothing notice noticed notices november now number numbers nut nutward o'clock oak observed occupies october odila of off offcut office often ok okay old on once ones only open opened opening operational or order ordered ordering orders other others ought oughta our out outstanding outta oven over overall overdue overview owing own owner pack packs paid pair paper parcel parlour partial particular pass passes past pavle pay people per percent perhaps permitted person persons phone pick picked picture piece pieces pig pity place placed places plain plan planed planned plate play please plumber pocket point polish polishing pool poor pop popped porch position positions possess possible pounds preparation pressed pressing price prices print printable printer priority produce produced program progress promise promised proud provide public pull pulled pulling purchase push pushed put quantity quarter question queue quick quicker quickly quiet quit quote rack radius ram ran rang range rated rather raw re reach read reading readings reads ready really reason receive received receiver receivers recheck rechecked rechecking rechecks reckon record recorded refret refrets regarded register regret regular reinspection reinstate rejoined release relief relocated remade remain remainder remaining remains remake remember reminders remove removed rename reorder replace replaced replacement report reported reports require requires reseat reseated reseating reservation reservations reserve reserved respectively responsible rest result retained retire retired retirement retiring return returned reuse reversed revoke rid right ring rings rock rocker rocking rocks rod rods rok role roll rough round rounded rounding router rubbish ruined rule ruler run running runs rush s said same sanded sanding sat saturday saturdays save saved savings saw sawed sawn say says scale schedule scheduled scrap scrapped scratch screen scrub seat seated seating see seems sell sells send sending sent september service set setting settings setup shall shallow shape she she'll sheet shelf shift shifted shimmed shop shopping short should show showed shows shuffle shut sick side sill silver since single sister sit sits sitting size sizes slid slide slips slot slots small smallest snapped so soft sold sole solid some somebody someone something soon soonest sorry sort sorts soul source space span spare spoilt spoken spool spot sprang spray spring springback springing sprung square squeeze squeezed staff stage stages stainless stand standard standing stands start started starting starts state status stay stayed stays steady steel step steps stick stickers sticking sticks still stock stocktaking stone stood stop stopped stopping stops straight straightedge straightened street strike strings struck stuff such sufficient suit suitable suits sum summarise sums sunday sundays sunk supplier suppliers supply suppose supposed sure table tablet take taken takes taking talk tang tare tell tenths terms text than that the their them then there these they they'd they're they've thick thickness thin thing things think this those threw through throw thrown thu thursday thursdays tight till time times tin to today together told tomorrow too took tools top tops torn tossed total touch touched touching toward treat treble trim true trued truing trying tue tuesday tuesdays turn turned turning turns twice typed typical uid un under undo unfinished unmeasured until untouched up upon urban urgent url us usable use used useful user using usual usually valid van very vienna view vintage vise visitors wait waiting waits wall want wanted wants warm was waste wasted way we we'd we've webhook wed wedding wednesday wednesdays wee week weekdays weekly weeks weigh weighed weighing weighs weight well went were what what've whatever wheel when whenever where whereabouts whether which while who whoever whole whom whose why wide width will window winter wire wires wise wish with withdraw withdrawn within without woman wood work working works workshop worn worth would wren write written wrong wrote x y'all ye year yesterday yet you you're zone 
)~",
R"~($common	a about across add after afternoon again ago ai all along already also altogether alway am an and another any anybody anymor anyon anyth are around arriv as ask assign at away back bar be becaus been befor behind being belong bend bent between bin bit board book both box broken but buy by call came can cancel chang check christma clos cm coil com come corner could count crown customer cut date day december deep deliver delivery did do doe doing done door down drawer dress drop due each edge else end enough enter even ever every everyth exist fair far ferro fil find fine finish fix flat for forget fortnight found free fret friday from full get give glue go goe going gone gonna good got grab groov groove had half hand happen hard has have he held her here hereby high him his hold home hour how i i'd i've if in inch includ instead into is it item its job just keep kept kindly know laid last late lead least leav left length let level levell lie lift like limit lindwurm line list littl long longer look loos lot low m machin machine made make man many mark mate material may me mean meant measur measure metre middl mil millimetr millimetre mind minute mm monday month more morn most mov move much must my nam name neck need never new next nip no nobody noon not note noth november now number nut o'clock of off old on once one only open or order other our out over own pass past peopl person phon piec piece plac plan pleas point polish position press promis provid pull push put quarter queu rack radius ran read ready receiv recheck reckon record register remain remov report reserv rest right rod round run said same sand saturday saw say scal scrap seat see send sent set shall she shop short should show side sinc sit slot so some somebody someth spring staff stag stand start stay stick still stock straight strik stuff supplier supply suppos tabl take tang tell than that the their them then ther thes they they'r thing think this thos threw through thursday till time tin to today together told tomorrow too took top touch tru tuesday turn under until up us use used using wait want was wast way we we'v wednesday wee week well went were what when wher which whil who whol whom why wide width will window wire with without work workshop would wrong y'all ye year yesterday yet you 
fit==	0:33 1:9 5:14 18:28 35:16 82:10
slot==	0:164 1:106 2:-51 3:132 4:88 5:-24 6:-12 11:-12 13:-41 15:-14 16:-32 21:-8 22:-10 23:-18 24:-18 25:-8 26:-11 27:-18 29:-16 30:-11 33:61 36:144 37:94 38:-19 39:-20 40:-18 41:103 42:63 43:-38 44:-33 45:-32 46:19 47:-17 48:-12 50:-8 64:-8 65:-18 70:-74 71:-31 72:15 73:-13 74:57 76:61 77:77 78:63 81:-9 82:-58 83:-11 84:-12 85:-9 87:-18 89:-26 90:-22 91:82 92:-17 93:57 94:-8 95:-53 96:-17 97:-37 101:-10 102:-8 103:15 104:-8 105:-14 106:53 107:-18 108:-16 110:-11 113:-13 114:-45 115:-14
length==	0:26 1:40 2:-12 3:18 4:90 7:13 22:43 24:-15 33:-12 36:-23 38:-8 39:14 40:-11 41:41 45:-15 46:-11 47:-9 49:-19 50:-22 56:-25 64:-9 66:8 68:23 71:-37 72:21 74:-24 75:-46 76:-13 78:80 80:-94 81:60 82:78 85:59 91:-11 92:-32 93:-32 95:-9 98:-17 114:-9 120:48 121:9 125:8
job==	0:64 2:22 4:-24 5:65 6:-36 7:-17 8:-12 9:-21 10:-17 11:12 12:-60 13:90 14:-21 15:42 16:44 17:88 18:28 19:-12 20:-19 21:-17 22:-20 23:79 24:26 25:-17 26:-17 27:-34 28:-23 29:23 30:81 31:-16 32:-16 33:43 34:-8 36:-20 37:9 38:-63 39:-36 40:-43 42:9 43:51 44:34 45:45 46:81 47:-35 48:56 49:-21 50:-26 51:-17 52:-23 53:-20 54:-35 55:-27 56:-8 57:-13 58:-21 59:-18 60:-18 61:-17 62:-18 63:-19 64:19 65:105 66:-16 67:-14 68:-17 69:-31 70:-50 71:11 72:25 73:14 74:44 77:12 79:-24 80:-34 81:-55 82:-38 83:59 84:19 85:-27 86:-13 87:-8 88:-15 89:73 90:21 91:31 92:40 93:30 94:36 95:67 96:32 97:13 98:-34 99:-38 100:-13 101:-36 102:-31 103:18 105:-10 106:-16 107:21 108:53 109:-18 110:-20 111:-37 112:-22 113:-14 114:43 115:20 116:-18 117:-29 118:-24 119:-15 120:-21 121:-24 122:-9 124:-15 125:188
pull==ed	0:77 2:-16 3:-12 4:-12 13:-9 15:-12 16:-8 17:-10 33:31 39:22 43:57 45:-9 48:13 70:-16 72:152 75:-12 77:-9 78:-16 79:18 82:-11 91:-16 95:47 96:-9 108:-8 113:-11 125:44
long==	0:53 1:20 2:-13 3:64 4:90 5:-17 6:-10 8:-15 9:28 11:57 13:-32 16:-25 17:-20 18:-8 21:-9 23:-10 24:-8 25:-13 27:96 29:-15 30:-9 32:69 35:-25 36:-11 38:-8 40:-14 41:25 42:-12 43:-8 44:9 45:-8 50:28 68:18 69:22 77:-16 78:-10 81:-11 85:38 86:56 89:-19 91:-15 92:-10 93:-14 99:-8 100:-11 101:8 104:31 122:-8 124:-10 125:13
fit	0:114 4:-17 5:14 18:27 33:-13 35:16 82:9 91:-9
^ fit	0:36
slot	0:66 1:63 2:41 3:30 4:198 5:-40 6:-29 7:-12 8:-12 9:-12 10:-10 11:-27 12:-12 13:22 14:-12 15:-30 16:-9 17:-32 18:100 19:-8 20:-11 21:-13 22:-15 23:-29 24:-33 25:-13 26:-18 27:-10 28:-11 29:-31 30:-20 31:-9 32:-10 33:43 35:-12 36:74 37:71 38:-31 39:-28 40:-26 41:45 42:38 43:45 46:18 47:-40 48:-29 49:-9 50:-14 51:-9 52:-8 53:-11 54:-13 55:-12 57:-10 63:-8 64:-34 65:-32 66:-11 68:-11 69:-12 70:61 71:86 73:-31 74:164 75:41 76:42 77:74 78:62 79:-14 80:-16 81:-34 82:21 83:-22 84:-21 85:-12 87:-32 88:-13 89:-41 91:96 92:-49 93:33 94:-16 95:10 96:19 97:26 99:-16 100:-8 101:-16 102:-12 103:35 104:17 105:-25 106:44 107:12 108:19 109:-9 110:-15 111:-12 112:-8 113:-33 114:-68 116:-11 117:-14 118:-9 121:-11 124:-9 125:-26
fit slot	0:31
the	0:-38 2:30 3:-35 4:17 5:-12 6:67 7:52 9:19 10:10 11:8 12:22 13:-42 14:11 15:-25 17:43 18:10 19:9 20:21 21:25 22:-21 24:11 25:-10 26:9 27:26 28:11 30:9 31:32 32:10 33:36 34:-18 35:23 36:18 38:35 39:12 40:25 41:32 42:19 44:45 45:40 46:-15 47:14 48:32 49:-48 52:-22 53:18 54:18 55:20 56:-11 57:39 58:-15 60:22 62:-18 65:-16 67:57 68:-10 69:28 70:17 71:31 72:33 73:10 74:22 76:20 77:11 78:-9 79:39 80:27 81:39 83:27 84:31 85:20 86:38 87:16 88:27 89:23 90:59 91:22 92:11 93:36 94:-15 95:8 96:-8 97:35 98:20 100:57 102:19 103:68 104:26 105:15 106:16 108:12 109:-19 110:-11 112:21 114:10 115:16 117:33 118:46 119:39 121:14 122:27 124:-21 125:-14
slot the	2:10 3:-19 4:15 33:9 37:21 41:9 42:-8 43:-9 44:15 45:-9 70:9 71:29 72:-10 76:-8 77:12 78:9 82:12 91:-18 92:-14 93:26
#o	0:79 1:-17 2:-20 3:46 4:8 5:-28 6:-22 7:-9 8:-15 9:-12 10:-10 11:32 12:30 13:-46 14:-11 15:-18 16:-12 17:-26 18:-21 19:-11 20:34 21:14 22:-11 23:-19 24:-20 25:-13 26:24 27:-37 28:21 29:41 30:28 31:-12 32:-25 33:20 34:12 35:-10 36:50 37:10 38:-16 39:-8 40:-15 41:-11 42:25 43:-36 45:74 46:8 47:22 48:-19 50:-15 52:-15 53:58 54:43 55:-12 57:-8 58:-8 60:-8 61:-15 62:-9 63:-12 64:-15 66:-10 69:-8 70:27 72:-25 73:-10 74:-17 75:12 76:35 77:30 78:47 81:-17 83:-14 84:-14 85:-13 87:-30 89:35 91:14 92:25 93:20 94:-12 95:39 97:27 98:-11 99:10 100:-15 101:-13 102:13 103:-11 104:-10 105:8 107:-29 108:-28 109:-10 110:54 111:54 112:41 113:-21 115:33 117:-8 118:41 119:-15 120:-9 121:-12 125:-35
the #o	0:47 1:-23 3:40 5:-22 6:-19 8:-11 9:-8 11:19 12:-27 13:-21 14:-8 15:-11 16:-28 17:-9 18:-16 19:-8 20:29 21:15 22:-8 23:-10 24:-13 25:-8 26:15 27:-26 28:35 29:-12 30:40 32:-14 33:21 34:9 36:8 37:25 38:-10 40:-9 42:12 43:-28 45:10 46:12 47:53 48:-13 50:-9 52:-8 54:38 55:-8 61:-11 63:-10 64:-10 70:32 72:-23 74:-12 75:15 76:21 77:41 78:25 81:-13 83:-10 84:-10 85:-12 87:-26 89:57 91:20 92:9 93:36 94:-10 95:44 97:33 99:-11 100:-10 102:16 103:-9 104:-8 107:-24 108:-22 110:58 111:49 112:12 113:-15 114:-17 115:25 117:-10 118:21 119:-14 121:-9 125:-25
length	0:13 1:37 2:17 3:16 4:212 6:-8 7:10 8:18 16:-9 22:19 24:-16 33:-16 36:-24 38:-9 40:-13 41:38 45:-24 46:-93 47:-10 49:-19 50:-24 55:30 56:-26 64:-10 66:8 68:22 71:-59 72:33 74:-24 75:-34 76:-13 78:78 79:23 80:39 81:57 82:28 85:57 89:-12 91:-12 92:-46 93:-36 95:-18 97:-14 98:-19 108:-8 114:-10 120:56
#o length	0:17 41:-8 42:13 78:-10
#d	0:40 1:88 2:61 3:91 4:-54 5:-23 6:-30 8:-53 9:-52 10:-11 11:-25 12:-14 13:-38 14:-17 15:-24 16:-30 17:-41 18:30 19:-43 20:-44 21:-28 22:-55 23:21 24:-35 25:-16 26:-26 27:-20 28:-22 29:-26 30:-22 31:-31 32:-33 35:-16 36:79 37:58 38:93 39:125 40:73 41:96 42:97 43:-34 44:-29 45:-46 46:64 47:-13 48:-18 49:55 50:55 51:29 52:-10 53:15 54:-12 55:10 57:-12 58:-12 59:-9 60:-16 61:-11 62:-11 63:-11 64:-23 65:-23 66:52 67:-31 68:84 69:96 70:82 71:-79 72:49 73:-16 74:135 75:-33 76:92 77:-47 78:70 79:-52 80:142 81:92 82:84 83:-19 84:-20 85:46 86:-12 88:85 89:-42 90:-25 91:-53 92:99 93:-52 94:-15 95:-47 96:-21 97:-42 98:-64 99:-17 100:-14 101:-15 102:-14 103:-14 104:-13 105:-18 106:-17 107:-23 108:-21 110:-17 111:-12 112:-16 113:-24 114:-26 115:-15 116:22 118:-21 119:-15 120:42 121:-28 122:-10 124:-12 125:-11
)~",
R"~(length #d	0:48 1:27 2:8 4:-11 24:-9 36:-13 39:16 42:18 45:-12 46:-61 49:-22 50:-8 56:-16 68:22 69:-13 71:-37 72:9 74:-13 75:-18 78:85 80:27 81:26 82:36 85:17 91:-8 92:-24 93:-24 95:-14 98:-9 114:-9 120:37
#d slot	0:18 42:-14 74:13 76:-9
#o slot	0:46 2:10 3:10 4:-25 36:11 37:-8 76:20 92:-8 93:10
#n	0:26 2:19 3:106 4:38 5:-56 6:-11 7:-19 8:-101 9:-96 10:-8 11:-31 12:-64 13:-78 14:-28 15:-30 16:30 18:-33 19:-75 20:-26 21:-28 22:-24 23:-27 24:-44 25:-61 26:-50 27:-32 28:-45 29:-46 31:-60 32:-35 34:-31 35:-31 36:147 37:81 38:50 39:78 40:24 41:87 42:76 44:85 45:105 46:24 47:30 48:-29 49:-34 50:66 51:12 52:55 53:-10 54:63 55:-22 56:-53 57:-41 58:-47 59:11 61:-78 62:-43 63:-56 64:-16 65:-26 68:50 69:15 70:131 71:93 72:71 73:80 75:159 76:57 77:47 78:79 79:16 80:60 81:97 82:174 83:-13 84:-11 85:41 86:-47 87:-31 89:137 90:58 91:29 92:119 93:89 94:-22 95:71 96:91 97:113 98:38 99:43 100:-56 101:39 102:25 103:-51 104:69 105:82 106:-11 107:-38 108:-34 109:18 110:-39 111:65 112:-39 113:27 114:47 115:56 116:56 117:49 118:10 119:-19 120:29 121:38 122:-52 123:-28 124:-24 125:28
slot #n	0:122 1:-74 2:8 3:58 4:-36 5:-16 6:-8 13:-32 15:-9 16:16 17:-10 18:-19 23:-8 24:-11 27:-19 30:-8 33:34 36:57 37:28 38:-18 39:-8 40:-13 41:12 42:54 43:-31 45:36 46:20 47:-14 48:-10 50:-8 64:-8 65:-13 70:23 71:23 72:28 73:-14 74:-40 75:62 76:86 77:23 78:58 80:-8 81:-20 82:14 85:-9 87:-14 89:-16 91:13 92:-22 93:32 96:20 97:25 105:-11 107:-13 108:-13 113:-13 114:-35 125:26
job	0:-36 1:-11 2:67 3:-9 4:38 5:68 6:85 7:-26 8:-39 9:45 10:-29 11:95 12:194 13:80 14:17 15:93 16:25 17:33 18:73 19:-28 20:-30 21:-28 22:-40 23:45 24:67 25:-38 26:-39 27:81 28:-45 29:46 30:40 31:-27 32:-31 33:35 34:-12 35:-24 36:-44 37:25 38:-96 39:-44 40:-59 41:15 42:32 43:46 44:36 45:16 46:76 47:61 48:95 49:-24 50:-35 51:-26 52:-33 53:-29 54:-47 55:-38 56:-11 57:-20 58:-33 59:-28 60:-30 61:-37 62:-34 63:-32 64:79 65:78 66:-24 67:-19 68:-25 69:-41 70:-24 71:9 72:44 73:40 74:32 75:-26 76:46 77:49 78:20 79:-31 80:-43 81:-73 82:-27 83:72 84:88 85:-32 86:-18 87:74 88:-21 89:-13 90:76 91:82 92:40 93:29 94:87 95:53 96:47 97:35 98:-42 99:-58 100:-19 101:-55 102:-42 104:-18 106:-29 107:80 108:74 109:-26 110:-31 111:-57 112:-32 113:63 114:56 115:41 116:-24 117:-41 118:-35 119:-26 120:-29 121:-36 122:-14 123:-10 124:-23 125:-31
#n job	0:31 2:-21 3:-10 4:30 11:11 15:-8 18:-8 23:27 27:29 33:35 36:31 37:-21 41:21 43:-23 44:13 45:-20 47:-9 48:-30 64:-16 65:-22 71:15 72:17 74:-10 75:37 76:9 77:33 78:-38 84:8 89:18 91:-47 92:31 95:-32 96:14 97:33 107:-15 108:16 114:-71 125:-14
job job	0:-13 2:-13 4:8 5:10 11:38 13:28 15:-20 23:39 24:21 27:34 33:30 36:-14 41:23 42:11 43:-12 45:-50 47:-31 48:-45 64:-8 65:-35 71:-9 74:-12 76:36 77:39 78:-12 90:32 91:36 92:48 93:-13 94:25 95:-13 96:22 97:17 107:-28 108:13 113:-18 114:-86 115:-13 125:-15
job #n	0:8 1:-34 2:66 3:-13 4:20 5:50 6:88 7:-19 8:-15 9:-27 10:-21 11:10 12:-50 13:79 14:-22 15:87 16:51 17:66 18:94 19:-12 20:-23 21:-20 22:-38 23:-10 24:43 25:-15 26:-29 27:42 28:-31 29:37 30:-26 31:-17 32:-18 33:22 34:-9 35:-27 36:-8 37:10 38:-81 39:-38 40:-52 41:31 42:8 43:101 44:29 45:45 46:-29 47:129 48:98 49:-16 50:-30 51:-23 52:-31 53:-25 54:-44 55:-32 56:-8 57:-14 58:-12 59:-24 60:-27 61:-17 62:-22 63:-21 64:107 65:90 66:-21 67:-14 68:-22 69:-33 71:10 72:33 73:33 74:64 76:45 77:21 78:14 79:-28 80:-37 81:-65 82:-30 83:75 84:79 85:-29 86:-14 87:105 88:-17 90:20 91:21 92:-8 93:18 94:53 95:-21 96:12 97:-29 98:-35 99:-51 100:-13 101:-50 102:-37 103:-17 104:-56 106:-17 107:123 108:63 109:-22 110:-25 111:-51 112:-25 113:105 114:217 115:63 116:-22 117:-37 118:-31 119:-20 120:-25 121:-32 122:-10 123:-8 124:-15 125:40
#n slot	0:24 2:27 3:40 4:-23 13:-14 16:31 33:16 36:-26 37:26 41:30 42:14 44:-17 45:-11 71:41 72:-43 74:18 75:-56 76:26 78:-52 82:12 90:9 91:-32 93:33 95:22 96:12 97:-26 114:-16
slot slot	0:-17 1:-8 3:-17 4:-23 16:11 33:18 37:24 41:26 42:20 71:29 74:-9 75:-22 76:14 77:10 78:28 91:-16 93:-10 96:9
#n length	0:19 3:14 22:44 39:9 41:27 69:-13 71:-17 72:8 74:-13 75:-20 78:13 80:-17 82:36 92:-14 93:-16 125:17
length #n	0:23 1:11 2:21 3:34 41:-19 42:-15 46:-31 50:-12 56:-10 66:12 69:-8 71:-20 72:14 74:-9 75:-8 81:9 82:21 85:37 92:-13 120:15
mm	0:35 1:28 3:79 4:-41 5:9 6:-21 7:34 8:8 9:-16 13:-11 16:34 17:-28 18:10 19:-14 20:-21 21:-10 22:-27 23:-17 24:10 27:-11 30:-10 31:-11 32:-8 33:-26 36:-54 37:-21 39:83 40:-46 41:74 42:55 43:-20 44:-29 45:-35 46:69 47:-13 48:-10 49:74 51:29 55:96 56:-16 60:-10 64:-11 65:-11 66:30 67:-37 68:60 69:60 70:-39 71:-51 72:13 73:-10 74:50 75:-29 76:44 77:-32 78:35 79:-39 80:28 81:70 82:86 84:-12 85:88 86:-11 87:62 88:76 89:-37 90:-16 91:-40 92:74 93:-48 95:-29 96:-12 97:-28 98:-41 99:-12 101:-8 104:-10 105:-9 107:-12 108:-9 113:-10 114:-16 115:-11 118:-11 120:-29 121:36 125:-45
#n mm	0:22 1:43 2:18 3:57 4:-30 6:-10 7:44 8:-9 16:32 17:-20 20:-9 22:-19 24:-10 33:-15 36:-24 37:-9 38:17 39:74 40:-23 41:71 43:-13 44:-11 45:-19 46:20 47:-9 50:-34 51:-14 55:63 56:-11 66:18 68:21 69:13 70:-9 71:-31 74:49 75:-26 77:-20 78:22 79:-25 81:43 82:43 84:-9 85:66 87:16 88:60 89:-22 90:-9 91:-29 92:41 93:-26 95:-12 96:-8 97:-18 98:-18 99:-8 117:-10 121:12 125:-21
mm length	0:16 1:26 3:11 41:-22 46:-28 68:11 72:8 78:-11 81:16 82:38
mm job	2:9 3:19 42:13 71:-21 78:28 82:11 92:-8 93:-11
in	0:30 1:-10 2:-21 3:32 4:-47 5:-11 6:-22 7:53 8:17 9:-11 10:26 11:-20 12:14 13:-18 14:31 15:-21 16:-20 17:-52 18:87 19:-9 20:44 21:45 22:29 25:14 26:12 28:58 29:-18 30:-22 31:-38 32:-9 33:-20 34:-8 35:24 36:35 37:-37 38:-27 39:54 40:-19 41:26 44:-27 45:-34 46:55 47:28 48:-11 49:-18 50:14 52:-21 53:12 54:29 55:48 56:-13 59:19 60:-14 62:-9 63:8 64:-26 65:-13 66:31 67:-24 70:-46 71:-49 72:42 73:-19 75:58 76:-10 77:-23 78:30 79:48 80:11 81:46 82:38 83:16 85:8 87:13 89:-39 90:-17 91:49 92:12 93:-44 94:24 95:8 96:25 97:-30 98:11 99:-33 100:-22 101:-17 103:-8 104:15 105:-10 106:-18 107:-34 108:-10 109:19 110:44 111:56 112:-33 114:-28 115:16 117:18 118:-17 119:-21 120:51 121:-22 124:9 125:-39
#d in	0:22 2:9 7:14 8:-10 18:19 22:-8 23:-10 33:-9 36:-32 37:-8 38:-9 39:28 40:-28 41:32 42:16 46:34 47:-8 49:-29 51:24 56:-10 67:-18 68:13 69:11 71:-11 72:12 74:10 75:-22 76:-11 78:16 80:28 81:55 85:14 87:12 88:16 91:-13 92:44 93:-13 95:-8 98:-10 120:58 121:-30 125:17
in slot	0:-14 1:-16 3:44 4:-20 36:8 37:-9 41:38 42:-24 70:-16 75:37 76:-20 78:-15 91:36 125:76
#r	0:30 1:-23 2:11 3:9 5:-15 6:-13 8:-10 9:-13 10:-9 11:-9 12:-10 13:-45 15:-16 16:19 18:-27 19:-9 20:27 22:-12 23:-17 24:-19 27:-30 29:9 30:13 31:-11 32:-9 33:14 34:11 35:-10 36:9 37:11 38:-8 40:-12 42:14 43:-38 45:32 47:30 48:-25 50:-9 52:32 53:15 54:80 55:-14 61:-16 62:-14 63:-13 64:-17 65:-23 70:30 71:48 72:-17 73:-10 74:-19 75:109 76:-11 77:18 80:-15 82:44 83:-11 84:-12 87:-26 89:84 90:15 91:27 93:17 94:-10 95:36 96:29 97:30 99:-11 100:-8 102:-10 105:89 106:11 107:-30 108:-31 109:25 110:27 111:64 112:13 113:-20 114:-25 115:-10 117:-14 118:46 119:-15 121:-10 125:-22
slot #r	0:41 1:-13 3:20 4:-31 13:-15 33:21 36:22 37:20 41:27 42:17 45:-9 70:44 71:13 72:-8 74:-11 76:-10 77:8 89:-10 91:-24 92:-11 93:-8 95:23 97:25 114:-11 115:8 125:-10
#r slot	0:26 75:-9 78:-10
#r job	0:12 4:-9 16:-8 41:25 45:20 71:-11 78:-16 97:10 105:41 114:-10
@job	0:-12 1:-17 2:77 3:34 4:35 5:27 6:63 7:-41 8:-56 9:-60 10:-35 11:16 12:-46 13:80 14:-38 15:93 16:63 17:52 18:72 19:-36 20:-47 21:-40 22:-40 24:19 25:-40 27:39 28:-69 30:-31 31:-45 32:-43 33:18 34:-14 35:-49 36:11 37:34 38:-29 39:-46 40:-49 41:40 42:34 43:62 44:59 45:76 46:45 47:116 48:125 49:-25 50:-27 51:-22 52:-25 53:-34 54:-29 55:-44 56:-15 57:-30 58:-29 59:-21 60:-34 61:-40 62:-29 63:-32 64:102 65:72 66:-22 67:-25 68:-20 69:-34 71:29 72:34 73:80 74:50 75:-10 76:30 77:9 78:48 79:-25 80:-22 81:-53 82:36 83:57 84:47 85:-34 86:-25 87:79 88:-29 89:47 90:53 91:41 92:38 93:50 94:74 95:45 96:51 97:48 98:-33 99:-39 100:-38 101:-45 102:-38 103:-41 104:-33 105:8 106:-10 107:74 108:49 109:-20 110:-46 111:-40 112:-53 113:105 114:220 115:55 116:-19 117:-36 118:-42 119:-40 120:-26 121:-33 122:-22 123:-12 124:-27 125:40
job @job	3:-24 4:9 13:-43 15:-15 18:8 24:9 27:14 33:10 36:-20 37:11 41:-26 43:-13 45:24 48:-19 64:8 70:-13 74:-16 75:8 77:-9 78:51 89:-18 90:17 91:29 92:14 93:29 94:12 95:15 96:13 108:18 113:-8 114:-31 125:-9
)~",
R"~(@job length	2:15 3:24 4:-8 36:-8 41:9 71:-19 72:12 78:16 92:-8
#d mm	0:19 2:-16 3:29 4:-10 8:23 9:-8 16:8 18:21 23:-10 33:-9 36:-29 37:-10 38:-17 40:-21 42:40 44:-8 45:-15 46:38 49:56 50:37 55:45 66:-9 67:-18 68:-8 69:9 70:-29 71:-18 72:19 76:46 77:-11 78:14 79:-10 80:28 81:30 82:45 88:24 89:-11 91:-10 92:40 93:-20 95:-16 97:-8 98:-20 114:-8 117:23 120:-18 121:26 125:-25
fret	0:77 1:-50 2:102 3:23 4:20 5:29 6:-21 7:-13 8:-12 9:-41 10:-12 11:-38 12:23 13:19 14:-14 15:-18 16:35 17:85 18:-35 19:-13 20:-15 21:-17 22:-34 23:-34 24:40 25:-29 26:-19 28:-15 29:-56 30:44 31:-11 32:-31 33:58 35:-20 36:32 37:9 38:-24 39:-23 41:92 42:40 43:51 44:26 45:88 46:65 47:-39 48:-28 49:-12 50:-21 51:-12 52:-11 53:-13 54:-15 55:-14 57:-10 58:-10 60:-9 64:-29 65:-29 66:-12 67:-22 68:-13 69:-18 70:11 71:10 72:76 73:35 74:-33 75:107 76:-24 77:101 78:40 79:18 80:-24 81:-29 83:-14 84:-23 85:-12 87:-43 88:-16 89:13 90:35 91:32 92:35 93:130 94:-17 95:69 96:70 97:49 98:-21 99:-23 100:-9 101:-20 102:-15 103:28 104:33 105:-41 106:-15 107:19 110:-14 111:-17 112:-13 113:-36 114:-47 115:-21 116:-12 117:-17 118:-12 120:-15 121:-12 124:-11
slot fret	0:20 1:-12 3:21 4:-13 33:8 37:17 41:9 70:8 71:22 74:-8 76:10 77:14 78:-31 91:-11 92:14 95:-8 97:-8
fret #n	0:11 1:-24 2:-23 4:-13 13:-37 15:-8 16:56 17:61 24:-25 27:-20 30:-11 33:25 36:75 38:-11 39:-11 40:-11 41:29 42:21 43:-40 45:14 46:11 47:-8 48:-9 64:-11 65:-11 67:-11 69:-8 70:61 71:31 73:-24 74:-16 75:27 77:50 78:-17 79:-8 81:-14 82:-12 87:-16 89:53 90:32 91:59 92:42 93:-8 95:64 96:40 97:48 99:-9 101:-8 104:-9 105:-16 107:-23 108:-16 113:-11 114:-17 115:13 125:-10
@job slot	0:21 1:-17 3:18 4:27 13:-37 36:14 37:12 41:18 43:-9 47:-8 64:-8 71:13 74:33 75:-35 76:-20 77:-8 91:-15 92:-10 93:24 97:43 107:16 108:27 114:-18
pull	0:82 2:-26 4:-19 11:-10 13:-21 15:-14 16:-14 17:-19 24:-8 27:8 29:-10 30:-9 32:-9 33:22 35:-8 36:-9 39:21 41:-9 43:112 44:-16 45:-18 47:-12 48:10 57:15 64:-11 65:-10 70:-19 72:177 73:-8 75:-19 77:34 78:-18 79:17 82:-12 87:-10 89:-11 90:-9 91:-20 93:-11 95:40 96:-12 97:-13 103:46 104:13 107:99 108:38 113:-16 114:-12 115:-9 122:8 125:21
~	1:-10 2:27 3:8 4:-22 7:-10 8:-18 9:-29 10:-20 11:-63 12:16 13:-15 14:-17 15:-16 16:23 17:-13 18:-20 19:-16 20:-13 21:-15 22:-18 23:-15 25:-39 26:-21 27:-45 28:-8 29:-27 30:-11 31:-23 32:104 35:19 36:-9 37:-8 38:-15 40:38 41:-40 42:8 43:-10 44:-20 45:-10 47:-12 48:19 49:105 50:36 51:-9 52:-11 53:23 55:132 56:165 57:40 58:89 59:-8 60:-13 61:57 62:-24 63:-17 64:21 65:-12 66:-14 67:-10 68:-9 69:32 70:-17 71:-27 73:-8 74:-11 75:-26 76:-14 77:58 78:-22 80:-9 82:-16 85:37 86:48 88:-9 89:-12 91:-21 92:-32 93:-16 95:-8 97:-19 98:53 99:41 100:-40 101:31 102:-17 103:-34 104:-14 105:-13 106:-17 107:-9 108:-31 109:-14 110:27 111:-36 112:-28 113:-11 114:8 115:-9 116:55 117:72 118:59 119:19 120:16 121:187 122:40 124:-15 125:-62
pull ~	0:11
~ slot	0:19 33:9 41:-8 44:10 71:-8 77:23 78:-12
and	1:-34 2:10 3:-27 5:-34 6:-38 7:-21 8:12 10:48 11:20 13:12 14:45 15:-23 16:20 17:19 19:12 20:46 21:51 22:-34 23:61 24:-24 25:14 26:-19 27:36 28:-23 29:15 32:9 33:-17 35:16 36:-18 38:-47 39:-19 40:-9 41:-9 42:39 44:-22 45:28 46:11 47:-8 48:-10 49:15 50:-22 51:-13 52:19 54:-21 59:17 60:-18 61:11 62:33 63:-8 64:-25 65:-28 66:30 67:13 69:-17 70:51 72:20 73:-29 74:-18 75:24 77:33 78:12 79:-18 80:15 81:25 83:35 84:-17 85:16 86:-31 87:-12 88:20 90:38 91:19 92:11 93:10 95:98 96:65 97:17 98:-27 99:-19 100:-25 101:-22 103:-21 104:-16 106:-19 107:-18 108:-20 109:30 110:-17 111:-31 112:-27 113:-26 116:54 117:12 118:-19 119:-22 120:19 121:-11 124:12 125:-79
#n and	0:-27 1:-23 4:18 10:-11 11:-9 13:31 17:-17 18:-11 23:-11 24:-13 27:-20 28:-9 29:-15 33:29 36:-83 37:10 38:-13 40:-11 42:24 43:14 47:-9 48:-9 52:13 53:9 54:17 65:-12 70:28 71:35 72:-8 73:-13 74:-19 75:-29 77:32 78:36 80:21 81:64 82:68 89:16 90:11 91:64 92:-14 93:32 95:37 96:20 97:51 101:8 108:-9 109:-8 112:-13 113:-8 114:-21 115:8 125:-8
and #n	0:-26 1:-17 4:10 6:-8 11:62 13:-18 17:-17 20:-8 22:-8 23:-21 24:-15 27:-24 28:-9 29:-13 30:-9 33:-16 36:-15 37:8 38:-16 39:-12 40:-30 42:21 43:32 45:29 46:26 47:-11 50:-23 54:9 65:-8 66:45 68:-9 70:53 71:31 72:-8 73:-14 75:39 77:29 78:30 79:-10 80:15 81:55 82:37 85:32 87:-10 91:40 92:47 93:-15 97:42 98:-8 99:-9 104:-8 105:-16 108:-8 109:-9 113:-10 114:-20 116:39 117:-13 120:-9 125:-8
#o job	3:11 11:12 37:8 42:-28 44:8 71:-8 75:25 89:13 93:18 95:-8
long	0:53 1:20 2:-13 3:64 4:90 5:-17 6:-10 8:-15 9:28 11:57 13:-32 16:-25 17:-20 18:-8 21:-9 23:-10 24:-8 25:-13 27:96 29:-15 30:-9 32:69 35:-25 36:-11 38:-8 40:-14 41:25 42:-12 43:-8 44:9 45:-8 50:28 68:18 69:22 77:-16 78:-10 81:-11 85:38 86:56 89:-19 91:-15 92:-10 93:-14 99:-8 100:-11 101:8 104:31 122:-8 124:-10 125:13
long ~	0:11
&#d	0:48 1:83 3:146 4:-45 5:-12 6:-28 8:-51 9:-48 10:-10 11:-24 12:-13 13:-37 14:-17 15:-24 16:37 17:-40 18:-8 19:-40 20:-42 21:-27 22:-53 23:23 24:-21 25:-15 26:-26 27:-19 28:-21 29:-26 30:-21 31:-31 32:-32 35:-15 36:91 37:43 38:89 39:99 40:77 41:147 42:107 43:-33 44:-26 45:-38 46:-21 47:-10 48:-17 49:14 50:40 51:34 52:-10 53:16 54:-12 55:13 56:9 57:-12 58:-11 59:-8 60:-16 61:-10 62:-11 63:-11 64:-17 65:-21 66:44 67:14 68:79 69:85 70:78 71:-54 73:-15 74:69 76:121 77:-46 78:40 79:-47 80:74 81:84 82:121 83:-19 84:-20 85:9 86:-10 88:50 89:-41 90:-23 91:-43 92:136 93:-32 94:-15 95:-38 96:-20 97:-35 98:-16 99:-16 100:-14 101:-15 102:-14 103:-14 104:-13 105:-17 106:-17 107:-23 108:-20 110:-16 111:-11 112:-16 113:-23 114:-20 115:-15 116:11 117:8 118:-21 119:-14 120:-24 121:9 122:-9 124:-11
&#n	0:71 1:121 2:23 3:-17 4:43 5:10 6:25 7:-9 8:-89 9:-81 10:22 12:-52 13:83 14:-17 15:33 16:29 17:33 18:39 19:-63 20:-26 21:-23 23:25 24:18 25:-51 26:-31 27:32 28:-19 29:28 31:-45 32:-22 33:44 34:-26 35:-18 36:-22 37:13 38:117 39:-8 40:107 41:-14 42:23 43:54 44:-27 45:14 46:-53 47:31 48:57 49:-25 50:76 51:44 53:-15 54:11 55:14 56:-21 57:-30 58:-35 59:8 60:28 61:-64 62:-33 63:-44 64:79 65:88 66:53 67:21 68:36 69:56 70:-26 71:-28 73:42 74:48 75:-66 76:15 77:60 79:38 80:-32 81:29 82:-59 83:8 85:-9 86:-37 87:39 88:10 90:27 91:12 92:24 93:35 95:42 97:69 98:57 99:91 100:-40 101:36 102:43 103:-40 104:74 105:-9 106:13 107:72 108:12 109:-20 110:-56 111:24 112:-16 113:41 114:22 115:46 116:29 117:34 119:-8 120:12 121:54 122:-42 123:-23 124:-12 125:11
&#o	0:54 1:-14 2:-26 3:53 5:-27 6:-22 7:-8 8:-15 9:-12 10:-9 12:32 13:-46 14:-10 15:-18 16:-11 17:-27 18:-20 19:-10 20:17 21:18 22:-11 23:-19 24:-20 25:-12 26:20 27:-34 29:36 30:35 31:-12 32:-15 33:19 34:12 35:-10 36:56 38:-15 39:-8 40:-14 42:46 43:-36 45:49 46:9 47:46 48:-18 50:-14 52:-12 53:28 54:51 55:-11 57:-8 61:-10 62:-8 63:-10 64:-14 65:8 66:-8 69:-8 70:17 71:21 72:-21 73:-10 74:-16 75:11 76:38 77:38 78:62 81:-15 83:-14 84:-14 85:-13 87:-29 89:16 91:20 92:31 93:12 94:-12 95:37 97:31 98:-10 99:11 100:-10 102:14 103:-11 104:-9 107:-29 108:-26 109:-9 110:15 111:42 112:55 113:-21 115:34 117:-8 118:48 119:-15 120:-9 121:-11 125:-32
&#r	1:-23 3:11 4:17 5:-15 6:-13 8:-10 9:-12 10:-8 11:-8 12:-10 13:-43 15:-16 16:14 18:-27 19:-9 20:27 22:-11 23:-17 24:-19 27:-30 29:9 30:14 31:-11 32:-8 34:11 35:-10 36:10 37:13 38:-8 40:-12 42:9 43:-36 44:-8 45:29 47:35 48:-25 50:-9 52:36 53:18 54:81 55:-14 61:-13 62:-14 63:-12 64:-16 65:-20 70:32 71:60 72:-9 73:-9 74:-19 75:31 77:20 78:25 80:-15 82:44 83:-11 84:-11 87:-26 89:84 90:16 91:32 93:27 94:-10 95:45 96:33 97:35 99:-11 101:8 102:-10 105:80 106:12 107:-29 108:-28 109:31 110:11 111:43 112:15 113:-19 114:-18 115:-9 117:-14 118:47 119:-14 121:-10 125:-18
&@job	1:-12 2:73 3:23 4:97 6:68 7:-40 8:-54 9:-58 10:-34 12:-44 13:122 14:-37 15:118 16:78 17:49 18:86 19:-35 20:-45 21:-39 22:-39 24:15 25:-38 26:-37 27:27 28:-67 29:8 30:-20 31:-44 32:-42 34:-14 35:-47 36:21 37:31 38:-26 39:-45 40:-47 41:30 43:87 44:46 45:47 46:46 47:89 48:85 49:-24 50:-26 51:-20 52:-24 53:-32 54:-28 55:-43 56:-14 57:-28 58:-28 59:-20 60:-32 61:-37 62:-28 63:-31 64:121 65:94 66:-21 67:-24 68:-19 69:-33 70:57 71:14 72:14 73:47 74:57 75:10 76:57 77:35 78:19 79:-24 80:-21 81:-51 82:35 83:71 84:55 85:-32 86:-24 87:102 88:-28 89:31 90:35 91:50 92:59 93:58 94:68 95:48 96:51 97:37 98:-32 99:-38 100:-35 101:-43 102:-36 103:-38 104:-32 105:9 107:94 108:48 109:-19 110:-42 111:-38 112:-51 113:120 114:37 115:62 116:-18 117:-34 118:-40 119:-37 120:-25 121:-31 122:-21 123:-11 124:-25 125:-9
)~",
R"~(&#d#n#o#r@job	41:13 42:10
#n $	0:43 1:35 3:14 4:89 5:33 7:-18 8:-14 9:-21 10:-24 12:-21 13:120 14:-20 15:80 16:52 17:35 18:21 19:-11 20:33 21:39 22:30 23:60 24:22 25:-10 27:70 28:-34 29:-55 30:-37 31:-13 32:-19 34:-8 35:-23 36:82 37:42 38:76 39:44 41:-39 42:-25 43:44 45:-27 46:-10 47:-22 48:40 50:-53 51:-28 53:-24 54:34 57:-12 59:33 60:34 61:-14 62:-20 63:-15 64:-12 66:8 68:-21 69:-27 70:41 71:16 73:89 74:-35 77:-49 78:-26 81:-51 82:21 83:21 84:43 85:-22 87:-26 88:-12 89:-16 90:13 91:-30 92:-36 93:32 95:18 97:42 99:-9 100:-14 101:-30 102:-8 103:-9 104:-39 105:47 106:-15 107:18 109:29 110:-30 111:8 112:-20 113:38 114:63 115:-40 116:-31 118:-38 120:-8 121:-16 122:-11 124:30 125:-18
*	0:22 1:115 2:21 3:-65 4:19 5:15 6:50 7:35 8:65 9:102 11:123 12:48 13:154 14:50 15:33 16:37 17:91 18:-24 19:67 20:79 21:91 22:96 23:106 24:55 25:10 26:96 27:34 28:86 29:147 30:61 31:67 32:76 33:135 34:20 35:74 36:24 37:-38 38:101 39:-33 40:126 41:-71 42:-52 43:74 44:11 46:-55 47:32 48:47 49:-9 50:-31 52:32 53:104 54:-11 55:79 57:34 58:32 59:-10 60:79 61:49 62:78 63:67 64:46 65:63 66:-19 67:-19 68:-20 69:-8 70:-54 71:-63 72:-64 73:-33 74:25 75:-81 76:-51 77:44 78:-13 79:-20 80:-20 81:-18 82:-62 84:-12 85:-12 86:-18 87:69 88:-15 89:68 90:-14 91:52 92:-36 93:-47 94:58 95:13 96:-9 98:13 99:79 101:64 102:40 103:17 104:46 106:102 107:71 108:97 109:-26 110:70 112:109 113:113 114:-41 115:-12 116:-59 117:89 118:75 119:26 120:-20 121:52 124:45 125:210
wire==	2:-17 3:-33 4:-25 5:62 6:28 7:11 8:51 9:74 10:53 11:-35 12:-15 13:-27 14:-23 15:-8 16:-28 17:-26 18:91 19:47 20:70 21:36 23:37 24:25 25:-26 26:-18 27:-19 28:-37 29:-49 30:-18 31:21 32:32 33:8 35:-38 36:-37 37:-10 38:-10 39:40 40:-9 41:-39 42:-13 43:32 45:-24 46:37 47:-13 48:-20 49:157 50:27 51:37 53:-12 55:-18 56:-8 57:-16 58:-27 64:-12 65:-12 66:16 67:-11 68:23 70:-22 71:38 72:13 73:39 74:-27 75:-8 76:-17 77:-13 78:28 79:25 80:-31 82:-66 83:44 84:-24 85:-20 86:-9 87:-13 88:52 89:-12 90:-13 91:56 92:-9 93:-14 95:-10 97:-10 98:-18 99:-10 100:-15 101:-11 102:-8 103:-13 104:-12 105:-8 106:-9 107:12 108:-19 110:-8 112:-10 113:-12 114:-11 116:22 118:24 119:-8 120:37 121:61 124:-12 125:-33
#d length	1:9 41:-12 46:-12 80:16
wire	2:-18 3:-33 4:-26 5:60 6:28 7:10 8:101 9:130 10:68 11:-39 12:-18 13:-28 14:-30 15:-9 16:-31 17:-40 18:90 19:56 20:67 21:29 22:-8 23:28 24:28 25:-30 26:-20 27:-23 28:-38 29:-52 30:-19 31:34 32:28 35:-41 36:-37 37:-10 38:-10 39:39 40:-10 41:-39 42:-13 43:28 44:-8 45:-25 46:37 47:-13 48:-20 49:155 50:27 51:29 53:-12 55:-19 56:-9 57:-17 58:-28 64:-12 65:-12 66:15 67:-11 68:23 70:-23 71:37 72:13 73:39 74:-27 75:-8 76:-17 77:-13 78:27 79:24 80:-31 82:-66 83:41 84:-25 85:-20 86:-10 87:-13 88:52 89:-12 90:-14 91:55 92:-10 93:-14 95:-10 97:-10 98:-19 99:-11 100:-16 101:-11 102:-9 103:-15 104:-12 105:-8 106:-10 107:11 108:-20 110:-9 112:-10 113:-12 114:-11 116:22 118:24 119:-9 120:36 121:60 124:-13 125:-36
#n wire	36:-10 69:-8 79:14 91:12 125:19
@wire	0:37 1:51 2:-35 3:-67 4:-38 5:52 6:79 7:59 8:151 9:121 10:-32 11:-57 12:-46 13:-47 14:-26 15:-32 16:-40 17:-44 18:111 19:137 20:91 21:77 22:84 23:60 24:83 25:-28 26:-33 27:-59 28:-41 29:-57 30:-35 31:121 32:96 33:26 34:-10 35:-33 36:-9 37:39 38:17 39:107 40:8 41:-59 42:-38 43:-27 44:-27 45:-33 46:33 47:-27 48:-25 49:-62 50:129 51:150 52:-16 53:-25 54:-20 55:-40 56:-11 57:-18 58:-20 59:-14 60:-29 61:-15 62:-18 63:-18 64:-17 65:-21 66:117 67:104 68:89 69:80 71:-22 72:15 73:-18 74:-59 75:-22 76:-26 77:-25 78:-39 79:103 81:60 82:-20 83:-26 84:-23 85:-25 86:-15 87:-32 88:91 89:-23 90:-19 91:-29 92:-42 93:-21 94:-18 95:-23 96:-18 97:-27 98:-30 99:-28 100:-20 101:-30 102:-18 103:-21 104:-22 105:-21 106:-24 107:-20 108:-26 109:-11 110:-25 111:-18 112:-23 113:-20 114:-15 115:-16 116:113 117:25 118:73 119:54 120:-22 121:-35 122:-20 123:-9 124:-20 125:35
wire @wire	5:9 9:-52 21:11 23:9 24:10 36:-11 39:-25 41:-16 45:-9 46:17 49:-16 50:-8 51:27 66:43 68:38 69:15 72:27 76:-8 80:-13 81:17 82:-43 116:17
@wire slot	18:14 36:-12
#n long	3:23 85:28
~ job	2:22 41:-10 42:22 48:8 64:20 75:-11 92:-17 97:-12
@job wire	18:-8 23:14 72:11 91:15
@wire wire	5:11 7:20 8:-17 9:-56 18:-25 19:8 20:-24 22:13 24:10 31:-14 32:74 33:34 36:-8 39:-14 46:29 49:-25 51:20 66:-15 67:9 68:8 69:12 79:22 80:-19 81:-11 82:-16 85:-9 88:62 118:19
wire the	1:8 5:8 9:-35 18:-13 20:-23 21:31 23:14 36:-18 46:22 49:-24 50:10 51:26 69:9 79:37 82:-18 116:13
the @wire	0:-8 1:-13 2:-8 3:-13 4:-10 5:30 7:47 8:26 9:61 10:-8 11:-21 12:-18 13:-16 14:-9 16:-12 17:-16 19:64 22:71 24:30 25:-10 26:-11 27:-21 28:-13 29:-17 30:-10 31:-8 32:79 33:29 35:-11 36:-28 38:-23 39:20 40:-24 41:-17 43:-8 44:-8 45:-9 46:15 47:-9 48:-11 49:-30 50:48 51:37 55:-9 60:-8 66:39 67:39 68:26 69:25 70:-17 71:-9 74:-11 76:-9 79:52 80:13 81:-10 82:16 85:-11 87:-10 88:33 92:-8 93:-8 98:-8 99:-8 100:-8 101:-9 103:-11 106:-9 112:-8 116:54 117:55 118:46 119:61 121:-10 122:-9
@wire length	1:9 46:-21 50:-14 66:21 68:10 80:25 81:22 82:-31
#n pull	39:15 79:12
@wire job	5:14 18:-10 23:14 24:16 36:-17 37:12 41:-8 45:-9 72:12
job the	0:-31 2:19 3:40 4:-15 11:22 13:14 15:-10 16:-9 18:-17 23:12 24:8 27:12 30:11 33:10 42:23 43:-12 44:22 47:-24 48:-28 64:-27 65:-11 72:12 75:-30 76:-20 78:-25 84:11 89:9 90:12 91:9 92:-9 94:14 95:24 97:45 113:-11 114:-33
the @job	0:16 1:50 3:64 5:20 6:13 7:-23 8:-25 9:-28 10:-12 11:59 12:-23 13:41 14:-17 15:33 16:56 17:17 19:-15 20:-19 21:-19 22:-13 23:14 24:19 25:-20 26:-20 27:34 28:-34 29:14 31:-16 32:-23 33:-36 35:-19 36:21 37:12 38:-39 39:-22 40:-20 41:29 42:18 43:35 44:35 45:24 47:35 48:33 50:-8 53:-19 54:-13 55:-19 57:-13 58:-9 59:-8 60:-14 61:-15 62:-13 63:-14 64:61 65:26 66:-8 67:-12 69:-16 70:-19 71:25 72:26 73:24 76:-12 77:-10 78:-21 81:-20 82:18 83:9 84:22 85:-11 86:-11 87:14 88:-15 89:17 91:43 92:22 93:38 95:28 96:14 97:65 98:-14 99:-16 100:-18 101:-18 102:-17 103:-25 104:-14 105:11 106:18 107:70 108:60 109:-8 110:-18 111:-19 112:-18 113:46 114:55 115:33 117:-16 118:-16 119:-22 120:-10 121:-12 122:-8 125:-58
@job job	0:-25 3:13 4:-14 11:14 13:-24 23:13 24:13 27:10 37:-8 41:-11 42:35 45:20 47:-12 64:-12 71:16 73:8 74:-17 75:-14 76:-14 84:11 91:-29 92:26 94:17 95:14 96:15 97:21 107:-14 108:22 114:-37
&@wire	0:25 1:37 2:-35 3:-60 4:-38 5:30 6:82 7:51 8:154 9:171 10:-31 11:-57 12:-46 13:-47 14:-26 15:-32 16:-39 17:-44 18:142 19:134 20:105 21:38 22:80 23:60 24:74 25:-28 26:-33 27:-59 28:-40 29:-57 30:-35 31:121 32:98 33:19 34:-10 35:-33 36:25 37:27 38:20 39:112 41:-41 42:-38 43:-27 44:-27 45:-22 46:8 47:-27 48:-17 49:-33 50:132 51:126 52:-16 53:-25 54:-20 55:-40 56:-11 57:-18 58:-19 59:-14 60:-29 61:-15 62:-18 63:-17 64:-17 65:-21 66:93 67:99 68:69 69:30 71:-19 72:16 73:-18 74:-53 75:-21 76:-21 77:-25 78:-30 79:64 80:9 81:47 82:51 83:-26 84:-23 85:-24 86:-15 87:-32 88:113 89:-23 90:-19 91:-29 92:-42 93:-17 94:-18 95:-23 96:-18 97:-27 98:-30 99:-28 100:-20 101:-30 102:-18 103:-21 104:-22 105:-21 106:-24 107:-20 108:-26 109:-11 110:-25 111:-18 112:-23 113:-20 114:-15 115:-16 116:93 117:16 118:75 119:52 120:-22 121:-34 122:-20 123:-9 124:-20 125:35
@job $	0:67 1:75 2:-30 4:75 5:22 6:27 7:-18 8:-22 9:-23 10:-12 11:15 12:-13 13:103 14:-15 15:94 16:40 17:23 18:60 19:-13 20:-16 21:-13 22:-14 23:66 24:46 25:-11 26:11 27:119 28:-20 29:-39 30:-8 31:-16 32:-12 33:62 35:-17 36:38 37:70 38:-31 40:-17 41:-40 42:-33 43:68 44:-10 45:-36 46:35 47:-32 53:-10 54:-9 55:-11 57:-9 58:-8 60:-9 61:-9 62:-13 63:-11 64:19 65:-15 67:-9 69:-8 70:19 71:-31 72:8 74:-14 75:-15 76:-20 77:-45 78:-18 81:-10 83:25 84:42 87:8 89:21 91:-21 92:-16 95:12 97:-8 98:-8 99:-11 100:-8 101:-11 102:-8 103:-12 104:-11 105:22 107:42 108:-22 110:-14 111:-10 112:-11 114:59 115:-20 117:-9 118:-10 119:-12 121:-8 125:-21
which==	0:86 1:67 2:38 3:-18 4:-11 5:100 6:33 7:44 8:-22 9:8 10:34 11:50 12:48 13:43 14:49 15:67 16:34 17:63 18:11 19:45 20:-18 21:-12 22:35 23:45 24:88 25:60 26:46 27:27 28:13 29:35 30:-9 31:19 32:48 33:44 34:26 35:20 36:-28 37:-20 38:-15 39:-28 40:-16 41:-13 42:-12 43:-28 44:-22 45:-21 47:-25 48:-12 50:-11 52:-9 53:-13 55:-16 57:-10 58:-15 61:-9 62:-8 63:-8 64:-18 65:-17 66:-13 67:-8 69:-11 70:-12 71:-14 72:-11 73:-8 74:-10 75:-13 76:-8 77:-15 78:-14 79:-11 81:-12 83:-19 87:-16 89:-27 90:-11 91:-22 93:-14 94:-8 95:-11 96:8 97:-19 98:-12 99:-18 100:-15 101:-21 102:-18 103:-25 104:-9 105:-11 107:-24 108:-22 110:-14 111:-13 112:-12 113:-19 114:-14 115:-12 116:-9 117:-12 118:-11 119:-9 120:9 121:-9 122:-13 123:-12 124:-9 125:-41
)~",
R"~(offcut==	0:68 1:33
suit==s	0:43 1:-9 8:-8 18:94 33:-8 35:13
of==	0:20 1:-19 3:33 4:20 5:11 6:-17 8:12 12:-15 13:-26 14:-19 16:24 17:-12 18:-24 19:11 20:36 21:18 22:31 24:17 25:19 26:-10 27:51 28:12 29:-26 30:15 31:-32 32:13 34:-12 37:-18 38:-54 39:38 40:-27 41:25 42:24 44:42 45:8 46:-15 47:38 48:-30 49:12 50:49 51:-12 52:-8 53:-16 54:12 55:-28 56:-14 57:8 58:16 59:-15 60:14 61:-16 62:10 63:25 64:-56 65:-27 66:76 67:-17 68:60 70:20 71:65 72:47 74:-13 75:25 79:52 80:28 81:28 82:69 84:16 86:13 87:40 88:20 90:55 91:34 92:14 93:-29 95:10 96:10 98:52 99:15 100:-8 101:9 102:-20 103:-30 105:-46 107:13 108:24 110:15 111:-29 112:-19 113:-12 114:-23 115:35 116:54 117:19 118:-22 119:-25 121:25 122:25 123:-11 125:13
which	0:86 1:67 2:38 3:-18 4:-11 5:100 6:33 7:44 8:-22 9:8 10:34 11:50 12:48 13:43 14:49 15:67 16:34 17:63 18:11 19:45 20:-18 21:-12 22:35 23:45 24:88 25:60 26:46 27:27 28:13 29:35 30:-9 31:19 32:48 33:44 34:26 35:20 36:-28 37:-20 38:-15 39:-28 40:-16 41:-13 42:-12 43:-28 44:-22 45:-21 47:-25 48:-12 50:-11 52:-9 53:-13 55:-16 57:-10 58:-15 61:-9 62:-8 63:-8 64:-18 65:-17 66:-13 67:-8 69:-11 70:-12 71:-14 72:-11 73:-8 74:-10 75:-13 76:-8 77:-15 78:-14 79:-11 81:-12 83:-19 87:-16 89:-27 90:-11 91:-22 93:-14 94:-8 95:-11 96:8 97:-19 98:-12 99:-18 100:-15 101:-21 102:-18 103:-25 104:-9 105:-11 107:-24 108:-22 110:-14 111:-13 112:-12 113:-19 114:-14 115:-12 116:-9 117:-12 118:-11 119:-9 120:9 121:-9 122:-13 123:-12 124:-9 125:-41
^ which	0:56 2:13 5:40 6:32 7:16 9:8 10:45 11:64 12:44 13:53 14:9 16:53 17:15 18:11 19:42 22:51 23:42 24:33 25:21 26:41 27:11 29:31 31:28 33:49 34:27 35:32 36:-20 37:-14 38:-9 42:-9 43:-15 44:-12 45:-12 47:-18 51:-13 53:-8 55:-10 64:-11 65:-10 66:-9 71:-8 83:-9 84:-11 87:-10 91:-16 97:-14 99:-12 100:-10 101:-17 102:-12 103:-18 106:-9 107:-14 108:-15 110:-10 113:-12 114:-10 123:-11 125:-45
offcut	0:71 1:23 3:-8 5:24
which offcut	0:11 1:-10 5:14
suit	0:27 1:11 8:-8 9:-8 16:-12 18:167 33:-9 35:13 74:-10
suit slot	0:9
of	3:30 4:18 6:-19 12:-18 13:-27 14:-21 16:23 17:-13 18:-28 20:42 21:19 22:27 24:11 25:16 27:50 30:12 31:-36 33:48 34:-8 36:14 38:19 39:20 40:12 41:22 42:21 44:40 46:-19 47:24 48:-31 49:12 50:37 51:-20 52:-14 53:22 54:29 55:-29 56:-14 58:15 59:-15 60:13 61:-18 62:9 63:23 64:-58 65:-29 66:50 67:-18 68:49 70:51 71:60 72:45 74:-14 75:24 77:-8 78:-9 79:50 80:27 81:25 82:41 84:14 86:12 87:39 90:54 91:32 92:13 93:-31 95:8 96:10 98:51 99:12 100:-11 102:-20 103:-30 105:-34 107:12 108:21 109:-8 110:13 111:-19 112:-10 113:-13 114:-24 115:33 116:52 117:23 119:-26 121:24 122:24 123:-11
#n of	0:38 1:-10 3:73 4:-18 5:-29 6:-10 7:-8 8:-9 13:-41 15:-15 18:-28 20:-10 21:-8 22:-16 23:-14 24:-13 27:-32 28:8 30:-15 33:28 38:15 39:-21 40:-24 41:80 42:29 43:-37 44:35 45:-55 47:-15 48:-9 50:-10 51:-14 54:-9 57:11 58:12 62:26 64:-10 65:-14 66:38 68:-16 69:-9 70:63 71:63 72:8 73:-17 74:-21 75:8 76:-35 77:44 78:78 79:-9 80:-10 81:11 82:10 83:-8 84:-10 85:-10 87:-24 88:-8 89:49 90:13 91:62 94:-10 95:25 96:32 97:33 98:21 99:9 104:-9 105:-9 107:-26 108:-16 113:-16 114:-26 116:55 117:52 118:-21 121:-15 125:36
of @job	0:-32 1:-17 2:10 3:27 4:36 6:27 15:-15 17:21 23:-10 29:11 30:-9 33:-20 36:19 41:11 42:53 44:46 45:11 64:-9 70:14 71:-11 76:-9 77:8 81:-9 82:27 83:-8 87:26 89:29 90:29 92:-10 93:-12 97:-12 107:32 113:-13 114:-9 115:15 125:-30
&#n@job	0:83 2:-14 3:-29 4:77 6:-17 7:-9 11:-21 13:-83 15:-11 18:-43 22:-8 23:-15 24:9 26:-8 27:-23 29:26 30:-11 36:30 37:38 38:17 39:-10 40:-23 42:-10 43:-13 45:-19 47:-39 48:18 54:-9 64:-11 69:-8 70:17 72:34 73:95 76:-16 77:75 78:10 79:-11 81:-14 82:-9 84:-36 87:-37 89:28 90:40 91:91 92:29 93:82 94:15 95:18 96:39 97:39 98:-8 99:-13 101:-8 104:-10 105:-9 108:12 111:-10 113:-38 114:63 117:-8 118:-9 121:-9 125:-13
piec==e	0:105 1:96 2:-8 3:8 4:-34 11:-8 13:-26 15:-10 16:-19 17:-19 18:-8 22:50 23:69 24:-14 26:-8 27:-9 29:-14 30:-11 33:84 36:100 37:90 38:95 40:112 41:-14 42:-13 43:-14 44:-9 45:-17 48:-8 50:-9 64:-9 65:-17 69:92 70:96 71:-36 73:-12 75:-23 77:-22 78:-65 80:-15 81:-15 82:-51 83:-12 84:-10 89:-16 90:-8 91:-19 92:-15 93:-16 95:-13 96:-14 97:-21 99:-8 101:-9 105:-11 107:-9 108:-8 113:-9 114:-12 125:54
fit==s	0:81 1:-10 4:-13 33:-11
piec	0:105 1:96 2:-8 3:8 4:-34 11:-8 13:-26 15:-10 16:-19 17:-19 18:-8 22:50 23:69 24:-14 26:-8 27:-9 29:-14 30:-11 33:84 36:100 37:90 38:95 40:112 41:-14 42:-13 43:-14 44:-9 45:-17 48:-8 50:-9 64:-9 65:-17 69:92 70:96 71:-36 73:-12 75:-23 77:-22 78:-65 80:-15 81:-15 82:-51 83:-12 84:-10 89:-16 90:-8 91:-19 92:-15 93:-16 95:-13 96:-14 97:-21 99:-8 101:-9 105:-11 107:-9 108:-8 113:-9 114:-12 125:54
which piec	0:88 1:-24 5:21 33:-9
piec fit	0:19 1:-8
do==	0:10 1:-18 2:39 3:100 4:34 5:38 6:51 7:10 9:59 10:13 11:15 12:10 13:8 14:-22 15:53 16:9 17:70 18:14 19:-17 21:-23 22:10 23:-21 24:21 25:17 26:12 27:31 28:25 29:26 30:-14 32:62 33:43 34:-9 35:65 36:-31 37:-28 39:-20 40:-12 41:-21 42:-18 43:-21 44:-16 45:-19 47:-12 48:-13 49:-9 50:-25 51:15 53:18 54:-13 57:15 58:-11 63:-13 64:66 65:14 66:-22 69:-21 70:-11 71:-12 73:-8 75:-23 76:-13 77:-18 78:-9 81:-14 82:-13 83:-14 86:14 87:-12 89:-13 90:-8 91:-19 92:-13 93:-10 95:-10 97:-14 98:-10 100:15 102:-11 103:12 104:-10 105:-22 106:13 107:-23 108:-23 110:11 111:-24 113:24 114:47 115:-25 116:-9 117:-14 118:-11 120:-21 122:18 124:-8 125:24
i==	0:32 2:23 3:18 4:-15 5:17 6:45 7:8 9:30 10:28 11:14 13:-33 14:20 16:38 17:20 18:14 19:-16 20:-10 21:-15 22:30 24:-24 25:-31 26:59 27:-20 28:39 29:22 30:31 31:-8 32:20 33:16 34:-13 35:49 36:-12 37:-31 38:-42 39:-13 40:15 44:-14 46:-12 48:-24 49:-8 50:-29 51:12 52:-9 53:-27 54:-21 55:10 57:-22 58:-24 59:-9 62:-17 64:34 65:15 66:23 67:-20 69:32 70:-9 73:-10 74:10 77:29 78:24 79:14 80:-10 84:-12 87:-8 89:-22 91:-41 93:-26 94:8 97:19 101:-30 102:-13 103:-15 105:31 106:14 107:28 108:24 109:-13 110:77 111:91 112:-14 113:-11 114:-30 115:16 116:9 117:-21 118:-22 119:8 120:-9 121:-12 124:35 125:37
use==	1:75 3:22 5:82 8:-35 9:15 11:-10 17:-11 18:17 19:-13 20:10 21:-14 22:40 23:-18 25:23 27:-8 30:-8 33:18 36:75 37:-20 38:-25 41:-14 70:-15 73:17 77:21 82:70 86:27 91:-8 101:48 102:45 105:-9 110:-16
in==	0:-11 1:-8 2:-31 3:46 4:-41 5:-9 6:-20 7:39 8:27 10:28 11:-18 12:15 13:-14 14:32 15:-19 16:-29 17:-50 18:66 20:50 21:48 22:37 25:16 26:15 28:63 29:-16 30:-20 31:-35 33:-15 34:-8 35:26 36:74 37:-29 38:-18 39:25 40:8 41:-10 42:-21 44:-23 45:-32 46:21 47:36 48:-9 49:9 50:12 51:-23 52:-20 53:14 54:30 55:54 59:20 60:-12 62:-8 63:8 64:-22 65:-9 66:27 68:-18 70:-41 71:-38 72:30 73:-17 74:-8 75:80 77:-21 78:12 79:53 80:-17 81:-10 82:30 83:17 88:-17 89:-37 90:-15 91:60 92:-25 93:-31 94:26 95:16 96:26 97:-26 98:21 99:-32 100:-22 101:-16 103:-8 104:16 105:-9 106:-17 107:-32 108:-9 109:19 110:46 111:56 112:-32 114:-24 115:17 117:24 118:-15 119:-20 120:-8 121:8 124:10 125:-26
do	0:10 1:-18 2:39 3:100 4:34 5:38 6:51 7:10 9:59 10:13 11:15 12:10 13:8 14:-22 15:53 16:9 17:70 18:14 19:-17 21:-23 22:10 23:-21 24:21 25:17 26:12 27:31 28:25 29:26 30:-14 32:62 33:43 34:-9 35:65 36:-31 37:-28 39:-20 40:-12 41:-21 42:-18 43:-21 44:-16 45:-19 47:-12 48:-13 49:-9 50:-25 51:15 53:18 54:-13 57:15 58:-11 63:-13 64:66 65:14 66:-22 69:-21 70:-11 71:-12 73:-8 75:-23 76:-13 77:-18 78:-9 81:-14 82:-13 83:-14 86:14 87:-12 89:-13 90:-8 91:-19 92:-13 93:-10 95:-10 97:-14 98:-10 100:15 102:-11 103:12 104:-10 105:-22 106:13 107:-23 108:-23 110:11 111:-24 113:24 114:47 115:-25 116:-9 117:-14 118:-11 120:-21 122:18 124:-8 125:24
piec do	0:17
i	0:32 2:23 3:18 4:-15 5:17 6:45 7:8 9:30 10:28 11:14 13:-33 14:20 16:38 17:20 18:14 19:-16 20:-10 21:-15 22:30 24:-24 25:-31 26:59 27:-20 28:39 29:22 30:31 31:-8 32:20 33:16 34:-13 35:49 36:-12 37:-31 38:-42 39:-13 40:15 44:-14 46:-12 48:-24 49:-8 50:-29 51:12 52:-9 53:-27 54:-21 55:10 57:-22 58:-24 59:-9 62:-17 64:34 65:15 66:23 67:-20 69:32 70:-9 73:-10 74:10 77:29 78:24 79:14 80:-10 84:-12 87:-8 89:-22 91:-41 93:-26 94:8 97:19 101:-30 102:-13 103:-15 105:31 106:14 107:28 108:24 109:-13 110:77 111:91 112:-14 113:-11 114:-30 115:16 116:9 117:-21 118:-22 119:8 120:-9 121:-12 124:35 125:37
do i	0:14 2:53 4:-11 5:41 6:15 8:-10 9:14 10:26 11:25 12:28 13:-9 16:38 17:43 18:21 22:-8 24:-18 25:-16 26:51 27:-8 28:51 29:-21 31:-19 32:34 33:-36 35:46 42:-8 75:-13 110:-12 111:-16 115:-8 125:-49
)~",
R"~(use	1:75 3:22 5:77 8:-35 9:15 11:-10 13:-8 17:-11 18:16 19:-13 20:9 21:-14 22:40 23:-19 25:33 27:-9 29:-9 30:-8 33:17 36:75 37:-21 38:-25 41:-14 70:-16 73:25 77:20 82:70 83:21 86:38 91:-8 101:47 102:45 105:-9 106:-8 110:-16
i use	0:9 3:52 5:36 18:22 36:-26 73:10 125:-21
use in	0:26 125:-9
#r $	0:9 1:-11 4:-9 16:-8 17:10 21:9 28:-8 30:23 34:13 36:20 37:9 45:-15 47:50 52:55 53:-13 54:71 65:-11 70:31 75:37 89:-12 93:19 105:-18 106:23 109:38 110:-8 111:46 112:27 118:51 125:-24
what==	0:87 1:48 2:17 3:-32 4:37 5:118 6:19 7:36 8:76 9:32 10:94 11:87 12:49 13:67 14:-31 15:-8 16:79 17:62 18:41 19:67 20:29 21:50 22:63 23:41 24:83 25:50 26:44 27:73 29:95 30:46 31:25 32:28 33:109 34:65 35:62 36:-33 37:-26 38:-31 39:-24 40:-26 41:-15 42:-18 43:-42 44:-28 45:-25 46:-8 47:-27 48:-21 49:-12 50:-14 51:-21 52:-26 53:-23 54:-14 55:-31 57:-18 58:-17 59:-11 60:-11 61:-17 62:-14 63:-15 64:-29 65:-28 66:-17 67:-12 69:16 70:-13 71:-14 72:-17 73:-13 74:-10 76:-11 77:-20 78:-14 79:-15 81:-14 82:-14 83:15 84:15 85:-9 86:-18 87:-24 89:-27 90:-13 91:-17 92:-15 93:-14 94:-19 95:-14 96:-10 97:-18 98:-13 99:-19 100:-23 101:-27 102:-19 103:-32 104:49 105:-26 106:-25 107:-29 108:-31 109:-26 110:-35 111:-26 112:-20 114:-20 115:-18 116:-14 117:-17 118:-24 120:-18 121:-23 122:-26 123:25 124:19 125:-34
stick==	3:-13 4:-10 5:35 6:18 8:-9 13:-16 31:-15 32:15 38:20 39:43 41:-11 49:33 50:-31 66:51 68:15 71:145 73:25 79:14 89:-8 96:-10 97:-8 116:21 117:20 118:-10 125:-13
end==	1:38 3:-9 9:9 11:-10 30:28 38:20 39:45 43:18 67:-11 69:27 70:32 71:-9 76:13 89:30 90:-10 96:20 114:17 125:-10
what	0:87 1:48 2:17 3:-32 4:37 5:118 6:19 7:36 8:76 9:32 10:94 11:87 12:49 13:67 14:-31 15:-8 16:79 17:62 18:41 19:67 20:29 21:50 22:63 23:41 24:83 25:50 26:44 27:73 29:95 30:46 31:25 32:28 33:109 34:65 35:62 36:-33 37:-26 38:-31 39:-24 40:-26 41:-15 42:-18 43:-42 44:-28 45:-25 46:-8 47:-27 48:-21 49:-12 50:-14 51:-21 52:-26 53:-23 54:-14 55:-31 57:-18 58:-17 59:-11 60:-11 61:-17 62:-14 63:-15 64:-29 65:-28 66:-17 67:-12 69:16 70:-13 71:-14 72:-17 73:-13 74:-10 76:-11 77:-20 78:-14 79:-15 81:-14 82:-14 83:15 84:15 85:-9 86:-18 87:-24 89:-27 90:-13 91:-17 92:-15 93:-14 94:-19 95:-14 96:-10 97:-18 98:-13 99:-19 100:-23 101:-27 102:-19 103:-32 104:49 105:-26 106:-25 107:-29 108:-31 109:-26 110:-35 111:-26 112:-20 114:-20 115:-18 116:-14 117:-17 118:-24 120:-18 121:-23 122:-26 123:25 124:19 125:-34
^ what	0:22 1:56 2:31 3:-13 4:37 5:45 6:39 7:43 8:69 9:9 10:74 11:49 12:59 15:15 16:40 17:50 18:44 19:42 21:47 22:47 23:127 24:61 25:61 26:12 27:65 28:41 29:44 30:40 31:55 32:37 33:66 34:98 35:70 36:-23 37:-19 38:-12 39:-10 40:-13 41:-12 42:-12 43:-23 44:-23 45:-19 47:-21 48:-11 50:-8 51:-15 52:-20 53:-18 54:-11 55:-25 57:-13 58:-11 59:-8 60:-8 61:-11 62:-9 63:-9 64:-23 65:-18 66:-12 67:-8 68:-8 69:-11 70:-9 71:-9 72:-10 73:-9 75:-11 76:-8 77:-11 78:-9 79:-9 81:-10 82:-12 83:-35 84:-31 86:-14 87:-15 88:-9 89:-17 90:-9 91:-17 92:-10 93:-10 94:-8 95:-9 97:-14 98:-9 99:-16 100:-16 101:-19 102:-14 103:-35 104:-25 105:-17 106:-14 107:-22 108:-22 109:-20 110:-20 111:-19 112:-16 113:-23 114:-16 115:-14 117:-13 118:-18 119:-17 120:-8 121:-17 122:-10 123:-20 124:-19 125:-9
stick	0:-17 1:-15 2:-8 3:-25 4:-14 5:47 6:54 8:53 9:-34 10:-8 13:-30 15:-12 16:-11 17:11 18:-15 19:-11 20:-20 22:-12 23:-11 24:-8 27:-12 31:9 33:-12 36:-12 37:-8 38:10 39:12 40:-9 41:-32 43:-12 44:-14 45:-25 46:-26 49:52 50:104 51:-20 55:-9 66:104 67:56 68:-10 71:196 72:-16 73:20 77:-12 81:-12 82:-11 85:-8 88:-18 89:60 91:-19 93:-16 95:-10 96:-21 97:-12 98:-11 99:-8 105:-9 108:-14 116:66 117:59 118:-33 119:-20 120:51 121:30 125:19
what stick	0:8 6:20
end	0:-15 1:99 3:94 4:-12 5:-8 11:-15 13:-12 16:-20 17:-14 27:43 29:-19 30:49 33:-12 36:19 38:13 39:84 40:-8 41:-14 42:52 43:78 44:-21 45:-10 46:-12 50:-12 55:-8 62:15 66:-14 67:-12 69:19 70:24 71:-25 72:-18 74:-18 75:-26 77:-21 78:21 79:9 80:14 81:-9 87:11 89:26 90:-13 91:-11 92:-20 93:11 96:17 107:15 114:11 122:10 125:-30
stick end	0:8 38:22 39:34 66:-8 67:-11 70:35 71:-8 79:19
short==	0:28 1:-18 2:9 3:-30 4:-12 5:39 9:52 11:-16 13:-11 16:27 17:-14 18:-10 22:40 23:-15 25:-9 27:-17 29:-8 30:-16 31:-10 33:-13 35:11 36:-14 39:23 40:31 41:-44 42:238 44:26 45:-30 51:31 71:-37 72:-21 75:72 77:-18 78:-19 79:17 81:22 85:28 86:59 89:-26 91:-17 92:-21 95:-17 97:-8 100:-10 101:-11 108:-9 116:-8 125:59
fret==	0:64 1:-15 2:-45 3:29 4:43 5:-8 6:-22 11:-12 13:23 15:-15 16:13 17:82 18:-15 21:-8 22:-16 23:-11 24:-10 27:-60 29:-11 30:-16 32:-12 33:13 36:67 37:9 38:-12 39:-10 41:131 42:69 43:-10 44:-52 45:29 47:-23 48:-12 50:-9 64:-9 65:-14 70:-79 74:-15 75:47 76:-20 77:129 78:89 79:-10 81:-13 82:-12 83:-10 84:-9 87:-25 90:16 91:21 92:45 93:130 94:-9 95:45 96:24 97:47 98:-8 99:-8 101:-9 104:-10 105:-16 106:-8 107:-29 108:-21 110:-8 111:-8 113:-16 114:-15 115:-28 117:-9 125:-9
short	0:28 1:-18 2:9 3:-30 4:-12 5:39 9:52 11:-16 13:-11 16:27 17:-14 18:-11 21:-8 22:35 23:-15 25:-9 27:-18 29:-9 30:-16 31:-10 33:-13 35:10 36:-14 39:16 40:30 41:-44 42:238 44:26 45:-30 50:-11 51:30 55:-8 71:-37 72:-22 75:72 77:-18 78:-19 79:77 81:21 85:28 86:59 89:-26 91:-17 92:-22 95:-17 97:-9 100:-10 101:-11 108:-10 116:-8 125:54
which short	5:16
short fret	0:36 2:-8 5:55 8:17 9:-12 16:-11 27:-8 33:-8 79:24
fret do	0:9 2:33 3:16 17:-16 36:-8 41:-9
#n in	0:-13 1:28 3:43 4:-8 16:9 17:-15 22:-14 23:16 33:13 36:38 37:-10 39:-18 41:-19 42:16 43:12 46:-8 47:47 54:11 65:14 70:-8 71:-9 72:18 77:11 78:25 81:-9 82:11 85:8 89:-9 91:-21 94:-8 96:13 105:8 106:9 115:10 120:8 125:10
in job	1:32 3:-9 5:18 18:31 24:8 33:12 36:-16 41:9 42:31 72:-14 74:18 75:-19 78:14 91:-9 125:13
what short	5:49 8:16 22:-8
what piec	0:53 1:-12 33:-8
piec suit	0:23 1:-8
suit the	0:8 18:18
&#r@job	0:8 11:-13 13:-10 18:-15 27:-11 33:9 47:42 48:-13 71:47 89:-10 90:13 91:59 93:20 95:16 96:8 108:-9
fit the	18:29
for==	0:69 1:51 2:-15 3:52 4:31 5:51 6:76 7:58 8:-25 9:10 10:18 11:43 13:-22 14:-12 15:-36 16:25 17:-18 18:57 20:76 21:22 23:94 24:-33 25:12 26:54 27:43 28:10 29:44 30:50 31:25 32:-46 33:-31 34:-10 35:8 36:18 37:118 38:10 39:-12 40:-16 42:-10 43:21 44:-27 45:-40 47:24 48:-60 51:-10 53:-13 54:-13 55:-16 57:-11 58:-9 60:26 61:-19 63:-13 64:-23 66:-35 68:-17 70:8 72:-33 73:39 74:-45 75:-47 76:-29 78:15 79:12 80:-28 82:12 83:92 84:104 85:21 86:17 87:-40 88:-23 89:-54 90:-26 91:8 92:-30 93:-37 94:-13 95:-33 96:-16 97:-42 99:-27 100:-10 101:13 102:-31 104:23 105:114 106:11 108:59 109:-40 110:12 111:-36 113:-17 114:-9 115:14 116:26 117:-24 118:14 121:-17 122:-11 123:-8 124:-22 125:-55
for	0:69 1:51 2:-15 3:52 4:31 5:51 6:76 7:58 8:-25 9:10 10:18 11:43 13:-22 14:-12 15:-36 16:25 17:-18 18:57 20:76 21:22 23:94 24:-33 25:12 26:54 27:43 28:10 29:44 30:50 31:25 32:-46 33:-31 34:-10 35:8 36:18 37:118 38:10 39:-12 40:-16 42:-10 43:21 44:-27 45:-40 47:24 48:-60 51:-10 53:-13 54:-13 55:-16 57:-11 58:-9 60:26 61:-19 63:-13 64:-23 66:-35 68:-17 70:8 72:-33 73:39 74:-45 75:-47 76:-29 78:15 79:12 80:-28 82:12 83:92 84:104 85:21 86:17 87:-40 88:-23 89:-54 90:-26 91:8 92:-30 93:-37 94:-13 95:-33 96:-16 97:-42 99:-27 100:-10 101:13 102:-31 104:23 105:114 106:11 108:59 109:-40 110:12 111:-36 113:-17 114:-9 115:14 116:26 117:-24 118:14 121:-17 122:-11 123:-8 124:-22 125:-55
for job	0:19 1:-20 3:-16 4:35 5:32 6:50 9:-9 11:15 12:13 13:-30 15:10 17:41 18:45 22:-8 23:16 26:-11 29:-31 36:13 37:72 38:-21 41:-10 43:12 45:-12 48:-11 64:-8 65:-35 73:40 74:-8 75:-8 77:-15 83:87 84:51 89:-13 93:-13 95:-12 104:-9 105:35 106:12 108:-13 113:-37 115:-13 125:54
&#n#r	0:-11 2:13 4:52 13:-11 16:22 17:-14 27:-9 30:-9 36:19 41:-12 42:10 43:-12 44:-12 45:29 47:21 54:17 70:-8 71:15 75:33 77:8 82:25 89:11 91:-11 96:29 101:13 107:-8 117:-8 118:16 125:27
piec for	0:94 1:-11 36:-8 37:-13
for the	0:-34 1:-32 2:-19 3:18 4:20 5:12 7:67 8:-15 9:21 10:14 11:9 12:-14 14:12 15:-20 16:54 18:15 19:22 20:17 22:-30 23:28 24:-9 26:38 27:-37 28:21 29:36 31:-10 32:-8 33:15 35:12 36:-38 37:56 38:-29 39:24 42:-15 44:-26 48:-29 50:-14 51:11 52:16 53:-10 57:-9 65:-13 69:-10 70:31 74:-12 75:-17 76:-8 77:-9 78:9 79:27 80:-12 81:12 83:14 84:43 85:12 87:-13 88:-11 89:-11 90:-8 91:15 93:-21 95:-13 97:-12 98:-8 99:-12 100:-14 101:-18 104:8 105:18 106:11 107:18 110:29 111:-9 113:50 116:-10 117:-12 118:14 121:-8 125:-32
)~",
R"~(what fit	0:32 33:-8
anyth==ing	0:89 1:-18 4:-10 8:-11 9:37 10:-18 11:108 13:35 16:-9 17:15 18:-8 22:61 23:48 24:51 25:-16 26:40 28:-9 30:-10 31:-11 32:-8 33:10 35:-10 37:-12 38:-11 39:-14 40:19 43:-16 47:-9 57:16 58:12 65:-10 77:-11 83:-25 84:60 89:-8 91:21 96:-10 100:-10 104:8 105:-12 106:-8 107:-12 108:-16 113:-9 114:13 119:-10 122:-18 125:15
on==	1:43 2:-19 3:10 5:-13 6:-12 8:41 10:-38 11:15 12:20 13:-26 14:-27 15:12 16:18 17:21 18:-15 20:-30 22:-34 23:-47 24:58 25:-18 27:31 28:25 29:51 30:-24 31:49 32:20 33:13 34:-12 35:-14 37:-23 38:-22 39:13 41:36 42:14 43:19 44:22 45:37 46:-20 47:15 48:-44 49:-13 50:-27 51:-23 52:43 53:47 54:51 55:34 56:-8 58:22 60:-16 61:-10 62:-34 64:-16 65:-9 66:18 67:26 70:-20 71:-23 72:-13 73:-23 76:-33 79:-17 80:-18 81:-29 82:27 83:-25 85:-15 86:-16 87:19 88:16 89:38 90:35 91:26 95:16 97:19 100:-33 101:18 102:-37 103:20 104:-29 105:42 106:23 107:57 108:45 109:15 110:42 111:67 112:49 113:-12 114:-18 115:44 116:42 118:28 119:-28 120:15 121:-26 122:-26 123:-9 124:-22 125:-11
anyth	0:89 1:-18 4:-10 8:-11 9:37 10:-18 11:108 13:35 16:-9 17:15 18:-8 22:61 23:48 24:51 25:-16 26:40 28:-9 30:-10 31:-11 32:-8 33:10 35:-10 37:-12 38:-11 39:-14 40:19 43:-16 47:-9 57:16 58:12 65:-10 77:-11 83:-25 84:60 89:-8 91:21 96:-10 100:-10 104:8 105:-12 106:-8 107:-12 108:-16 113:-9 114:13 119:-10 122:-18 125:15
^ anyth	0:59 11:40 13:52 23:21 43:-8 125:-13
anyth for	23:-10 37:-8 84:60
for slot	0:56 1:-24 3:52 4:-28 16:-8 33:-8 36:22 37:57 42:62 44:10 70:11 72:-10 74:-9 78:17 82:-11 91:-13 125:-19
on	1:43 2:-19 3:10 5:-13 6:-12 8:41 10:-38 11:15 12:20 13:-26 14:-27 15:12 16:18 17:21 18:-15 20:-30 22:-34 23:-47 24:58 25:-18 27:31 28:25 29:51 30:-24 31:49 32:20 33:13 34:-12 35:-14 37:-23 38:-22 39:13 41:36 42:14 43:19 44:22 45:37 46:-20 47:15 48:-44 49:-13 50:-27 51:-23 52:43 53:47 54:51 55:34 56:-8 58:22 60:-16 61:-10 62:-34 64:-16 65:-9 66:18 67:26 70:-20 71:-23 72:-13 73:-23 76:-33 79:-17 80:-18 81:-29 82:27 83:-25 85:-15 86:-16 87:19 88:16 89:38 90:35 91:26 95:16 97:19 100:-33 101:18 102:-37 103:20 104:-29 105:42 106:23 107:57 108:45 109:15 110:42 111:67 112:49 113:-12 114:-18 115:44 116:42 118:28 119:-28 120:15 121:-26 122:-26 123:-9 124:-22 125:-11
#n on	0:68 1:-20 3:33 4:46 11:-11 13:-19 15:-10 16:12 24:-9 27:-31 29:-15 33:13 36:54 37:-16 41:27 43:-29 44:9 45:-45 64:-9 65:-10 72:11 73:13 76:-8 77:12 82:-19 87:-13 89:29 90:12 91:51 92:-12 93:40 94:-22 95:12 96:20 97:24 105:10 107:-28 108:-28 110:-10 113:26 114:-16 115:23 125:13
on the	0:8 1:81 2:-25 5:-25 6:11 7:23 8:43 10:-12 11:53 12:9 13:-8 14:9 16:-13 19:-14 20:-17 21:14 23:-11 24:14 25:-26 26:-8 27:-14 28:-20 29:-24 30:-17 31:-35 32:-21 35:-18 36:20 38:-11 39:26 40:-12 41:60 43:48 44:18 45:39 47:13 48:-24 50:-15 53:-24 54:15 55:-18 57:-12 59:8 61:-8 63:11 64:-21 66:11 67:49 68:14 69:-15 70:8 72:13 73:-13 74:-17 75:8 76:-16 78:-18 81:-9 82:10 83:-16 84:-11 87:34 88:13 89:43 90:40 91:8 92:-8 93:-41 95:29 96:-16 97:11 98:12 100:-20 101:39 102:-11 103:30 104:-9 105:-10 106:-12 107:24 110:-20 113:-13 114:-28 115:-14 116:21 117:-12 119:-8 120:19 121:-14 125:-57
is==	0:-15 2:-38 3:55 5:-46 6:-35 7:-38 8:43 9:15 10:-18 11:8 13:47 14:25 15:76 16:-28 17:35 19:-26 20:-16 23:61 24:-13 25:60 26:35 27:24 28:59 29:32 30:27 31:48 33:-75 34:-20 36:-30 38:-12 39:-29 40:28 41:8 43:35 44:-10 45:19 46:-9 48:32 49:-19 50:-34 51:40 52:-12 53:24 54:-19 55:60 56:-11 57:-18 58:-21 59:46 60:14 61:8 62:-8 64:8 65:33 67:8 68:30 69:22 70:-31 72:-52 73:20 74:-40 75:8 76:35 77:30 78:23 79:-24 81:-20 82:-36 83:-8 84:10 85:29 86:-11 87:57 88:17 89:43 90:8 91:49 92:25 93:40 94:21 95:-21 97:-21 98:11 100:-12 101:25 102:50 103:8 105:-9 106:-12 108:-24 111:-15 112:47 113:17 114:15 115:-24 116:-29 117:8 118:27 119:49 121:49 122:-15 123:-15 124:-25 125:47
ther==e	0:87 2:-10 3:-19 4:16 6:11 7:38 8:54 9:9 13:-32 14:31 15:-25 16:-12 17:13 18:-21 19:23 20:-15 21:8 22:24 23:-40 24:-11 25:10 26:19 27:-16 29:-19 31:-19 35:64 36:19 37:-9 38:-13 40:-13 43:-15 44:-9 45:-12 48:-8 50:-11 51:8 53:-11 65:-10 66:48 67:20 68:-11 70:-8 72:-8 77:-14 78:-9 81:-13 82:9 84:-11 87:13 88:-8 89:10 90:27 91:17 92:-8 93:39 94:10 95:-8 96:-8 97:-14 98:32 99:82 100:19 102:-13 103:-10 104:-8 106:-11 107:-10 108:20 113:10 114:-8 116:-10 117:-10
an==	0:26 11:-11 16:-8 24:10 31:22 35:23 38:16 39:23 43:-10 44:10 52:-8 54:11 70:19 76:15 95:17 98:11 102:10 104:47 105:39 116:21 120:13 125:-10
that==	0:47 1:-21 3:32 8:-8 9:-38 13:-19 14:15 15:-19 16:-14 17:-25 18:28 21:-13 23:-14 24:48 25:-12 26:-14 27:10 28:-26 29:-39 30:-11 31:30 32:15 33:-40 34:34 35:-19 36:58 37:-25 38:-9 41:-23 42:-20 43:26 45:-27 47:-14 48:18 50:15 51:-8 52:-23 53:12 54:-9 55:17 58:-12 59:38 60:-16 62:26 63:-19 65:-12 66:-9 68:-8 70:-15 71:14 76:-9 77:9 78:-13 79:-13 80:13 81:-21 83:45 84:48 85:-15 86:17 87:30 88:-18 89:-30 90:-14 91:-12 92:-13 93:27 94:-16 95:-14 96:12 97:8 98:-13 99:9 105:-16 106:15 107:-11 108:8 109:-9 110:-17 111:-10 112:37 115:-10 116:-22 117:35 118:31 119:12 121:-13 123:48 124:88
is	0:-15 2:-38 3:55 5:-46 6:-35 7:-38 8:43 9:15 10:-18 11:8 13:47 14:25 15:76 16:-28 17:35 19:-26 20:-16 23:61 24:-13 25:60 26:35 27:24 28:59 29:32 30:27 31:48 33:-75 34:-20 36:-30 38:-12 39:-29 40:28 41:8 43:35 44:-10 45:19 46:-9 48:32 49:-19 50:-34 51:40 52:-12 53:24 54:-19 55:60 56:-11 57:-18 58:-21 59:46 60:14 61:8 62:-8 64:8 65:33 67:8 68:30 69:22 70:-31 72:-52 73:20 74:-40 75:8 76:35 77:30 78:23 79:-24 81:-20 82:-36 83:-8 84:10 85:29 86:-11 87:57 88:17 89:43 90:8 91:49 92:25 93:40 94:21 95:-21 97:-21 98:11 100:-12 101:25 102:50 103:8 105:-9 106:-12 108:-24 111:-15 112:47 113:17 114:15 115:-24 116:-29 117:8 118:27 119:49 121:49 122:-15 123:-15 124:-25 125:47
^ is	0:33 1:29 3:63 4:14 5:-8 6:11 9:45 11:33 12:-11 13:133 14:-35 15:81 16:58 17:126 18:58 19:-9 20:-9 21:30 22:31 23:125 25:123 26:95 27:-20 28:122 30:70 31:48 32:-10 33:-8 35:32 36:-22 37:-16 38:-27 40:-28 41:-27 42:-20 43:-44 44:-23 45:-13 47:-10 48:-14 51:-26 53:-28 55:-25 59:-10 61:-9 62:-8 63:-10 64:-23 65:-27 66:-11 68:-10 69:-16 76:-12 77:-16 78:-9 83:-23 84:-19 85:-8 86:-13 87:-27 88:-19 89:-37 90:12 91:-39 92:11 93:-18 94:-15 99:-14 100:-8 101:-27 102:-22 103:-18 105:-14 106:-18 107:-14 108:-17 109:-8 110:-15 111:-18 112:-16 113:-34 114:-12 117:-9 118:-13 119:-10
ther	0:87 2:-10 3:-19 4:16 6:11 7:38 8:54 9:9 13:-32 14:31 15:-25 16:-12 17:13 18:-21 19:23 20:-15 21:8 22:24 23:-40 24:-11 25:10 26:19 27:-16 29:-19 31:-19 35:64 36:19 37:-9 38:-13 40:-13 43:-15 44:-9 45:-12 48:-8 50:-11 51:8 53:-11 65:-10 66:48 67:20 68:-11 70:-8 72:-8 77:-14 78:-9 81:-13 82:9 84:-11 87:13 88:-8 89:10 90:27 91:17 92:-8 93:39 94:10 95:-8 96:-8 97:-14 98:32 99:82 100:19 102:-13 103:-10 104:-8 106:-11 107:-10 108:20 113:10 114:-8 116:-10 117:-10
is ther	0:114 1:13 3:-18 4:27 6:20 8:62 9:34 13:-35 14:64 15:-18 17:12 18:-11 19:-9 21:11 22:35 23:-30 25:-44 26:35 27:-12 29:13 30:16 32:-8 35:36 36:-9 87:-8 91:-12 108:-12 113:-8 125:-17
an	0:26 11:-11 16:-8 24:10 31:22 35:23 38:16 39:23 43:-10 44:10 52:-8 54:11 70:19 76:15 95:17 98:11 102:10 104:47 105:39 116:21 120:13 125:-10
ther an	0:17
an offcut	0:32
that	0:47 1:-21 3:32 8:-8 9:-38 13:-19 14:15 15:-19 16:-14 17:-25 18:28 21:-13 23:-14 24:48 25:-12 26:-14 27:10 28:-26 29:-39 30:-11 31:30 32:15 33:-40 34:34 35:-19 36:58 37:-25 38:-9 41:-23 42:-20 43:26 45:-27 47:-14 48:18 50:15 51:-8 52:-23 53:12 54:-9 55:17 58:-12 59:38 60:-16 62:26 63:-19 65:-12 66:-9 68:-8 70:-15 71:14 76:-9 77:9 78:-13 79:-13 80:13 81:-21 83:45 84:48 85:-15 86:17 87:30 88:-18 89:-30 90:-14 91:-12 92:-13 93:27 94:-16 95:-14 96:12 97:8 98:-13 99:9 105:-16 106:15 107:-11 108:8 109:-9 110:-17 111:-10 112:37 115:-10 116:-22 117:35 118:31 119:12 121:-13 123:48 124:88
someth==ing	0:66 4:-15 11:10 13:-9 18:13 25:12 26:11 33:32 72:-11 87:39 99:11 125:-10
someth	0:66 4:-15 11:10 13:-9 18:13 25:12 26:11 33:32 72:-11 87:39 99:11 125:-10
^ someth	0:36 87:40
in @job	18:54 87:8 94:9
offcut for	0:28
in the	0:21 1:28 2:-15 3:15 4:-33 5:-18 6:-8 7:-11 8:78 11:24 12:10 13:-21 14:50 17:-22 18:13 19:-14 20:-10 21:-54 22:38 25:-22 26:24 27:-18 28:-28 30:-10 31:-10 32:-11 35:-16 36:18 37:-8 39:40 40:35 41:-11 42:-16 44:-14 45:-11 46:-10 47:-15 48:-8 55:-19 61:38 62:-8 63:-11 69:20 70:-20 71:-21 72:37 75:44 77:-18 78:45 79:22 81:39 83:21 84:-13 90:-14 91:49 92:-11 93:-15 94:10 95:-22 96:33 98:11 99:-8 101:18 102:-11 103:-11 105:14 107:-12 109:-13 110:22 112:-12 118:-13 120:-8 122:11 125:-18
)~",
R"~(a==	0:17 1:48 2:11 3:15 4:-12 5:18 8:-42 9:-19 10:-20 11:-13 14:-20 15:-17 16:-16 17:-34 18:-17 19:-20 21:-24 22:-22 23:-13 24:-12 26:12 27:55 28:-37 29:-16 30:42 31:-24 32:-18 33:-41 35:42 36:-52 37:-16 38:-22 39:14 41:-30 42:34 43:-34 44:-21 45:-19 46:8 47:-29 48:-22 49:58 50:21 51:26 52:23 53:47 54:-16 55:20 56:17 58:50 61:30 62:-11 63:13 64:-20 65:25 66:-28 67:-59 68:43 69:9 70:-27 72:-27 74:30 75:-14 77:-18 78:35 79:45 80:-10 81:-27 82:-14 84:-15 85:36 86:-25 87:11 89:29 91:-37 92:20 93:-12 94:31 95:18 96:17 97:10 98:65 99:11 101:-24 102:-8 103:54 104:81 105:-11 106:-25 107:-29 108:49 109:-13 111:-22 112:26 113:50 115:-10 118:-17 119:-8 120:75 121:-11 124:-11 125:28
a	0:17 1:48 2:11 3:15 4:-12 5:18 8:-42 9:-19 10:-20 11:-13 14:-20 15:-17 16:-16 17:-34 18:-17 19:-20 21:-24 22:-22 23:-13 24:-12 26:12 27:55 28:-37 29:-16 30:42 31:-24 32:-18 33:-41 35:42 36:-52 37:-16 38:-22 39:14 41:-30 42:34 43:-34 44:-21 45:-19 46:8 47:-29 48:-22 49:58 50:21 51:26 52:23 53:47 54:-16 55:20 56:17 58:50 61:30 62:-11 63:13 64:-20 65:25 66:-28 67:-59 68:43 69:9 70:-27 72:-27 74:30 75:-14 77:-18 78:35 79:45 80:-10 81:-27 82:-14 84:-15 85:36 86:-25 87:11 89:29 91:-37 92:20 93:-12 94:31 95:18 96:17 97:10 98:65 99:11 101:-24 102:-8 103:54 104:81 105:-11 106:-25 107:-29 108:49 109:-13 111:-22 112:26 113:50 115:-10 118:-17 119:-8 120:75 121:-11 124:-11 125:28
ther a	0:19 1:24 3:-13 4:29 8:14 13:-11 14:-9 26:29 35:46 108:-9
a piec	0:49 37:-8 68:15
someth for	0:71 4:-11 72:-10
find==	0:24 4:-9 35:18 37:-8 52:9 72:10 75:-9 77:59 78:-9 91:43 125:-17
me==	0:44 1:-23 2:-13 3:16 4:50 5:-9 6:35 7:11 8:62 10:37 13:47 14:-10 15:-12 16:48 17:24 18:-15 21:-8 22:-14 24:-9 25:-14 27:-19 28:35 29:40 30:-17 31:-12 32:-13 33:15 34:13 35:52 36:-21 37:11 38:-18 39:18 40:-13 44:-16 47:-10 48:-16 50:-17 51:48 52:-10 53:-18 62:-9 63:-9 64:30 65:-10 67:-17 68:19 69:-9 70:42 71:-10 72:-18 75:-16 77:-11 81:10 82:-10 83:-20 84:-17 87:-14 89:16 90:-9 91:-14 92:-11 93:-10 95:-8 97:-8 98:-11 99:-9 100:-13 101:-13 103:-14 104:-8 105:59 106:-14 107:-10 109:-8 110:73 112:-15 114:-17 117:-9 118:-8 119:-10 123:-10 124:29 125:28
find	0:24 4:-9 35:18 37:-8 52:9 72:10 75:-9 77:59 78:-9 91:43 125:-17
^ find	0:28 1:8 4:-8
me	0:44 1:-23 2:-13 3:16 4:50 5:-9 6:35 7:11 8:62 10:37 13:47 14:-10 15:-12 16:48 17:24 18:-15 21:-8 22:-14 24:-9 25:-14 27:-19 28:35 29:40 30:-17 31:-12 32:-13 33:15 34:13 35:52 36:-21 37:11 38:-18 39:18 40:-13 44:-16 47:-10 48:-16 50:-17 51:48 52:-10 53:-18 62:-9 63:-9 64:30 65:-10 67:-17 68:19 69:-9 70:42 71:-10 72:-18 75:-16 77:-11 81:10 82:-10 83:-20 84:-17 87:-14 89:16 90:-9 91:-14 92:-11 93:-10 95:-8 97:-8 98:-11 99:-9 100:-13 101:-13 103:-14 104:-8 105:59 106:-14 107:-10 109:-8 110:73 112:-15 114:-17 117:-9 118:-8 119:-10 123:-10 124:29 125:28
find me	0:26 4:-8
me a	0:25 1:-10 13:17 35:-12 125:52
of job	1:-27 3:59 4:42 5:-31 11:9 12:-10 15:-25 16:28 17:28 18:15 22:-8 23:-19 24:10 29:13 30:-22 33:-10 38:-14 39:-17 40:-10 41:44 42:-14 44:34 45:67 47:-14 48:-20 50:-9 54:-9 64:-14 65:-33 66:-8 68:-8 70:27 71:46 72:37 73:-20 74:-17 75:9 77:12 78:38 79:-8 80:-18 81:-24 82:-15 84:24 85:-8 87:47 89:27 90:9 91:42 93:9 94:20 96:17 97:17 98:-12 99:-12 101:-12 104:-10 105:-14 107:37 108:33 113:-16 114:10 115:9 117:-11 120:-8 125:59
of the	0:26 1:-10 2:48 3:18 4:-14 5:-9 7:14 8:-18 9:-40 11:-19 12:10 15:-18 18:-14 19:12 20:10 22:14 25:12 26:8 27:53 30:-26 31:-18 33:15 35:-9 37:-13 39:18 40:-37 41:22 44:-35 45:-31 46:-8 47:-27 48:-19 49:-8 50:41 51:-15 53:27 55:24 60:-10 64:-13 65:-10 66:33 67:-15 68:30 70:15 71:17 73:22 74:8 78:17 79:-15 80:30 81:56 82:38 84:-18 85:31 86:-21 87:11 90:14 91:20 94:15 95:19 96:21 97:11 98:-22 99:8 102:-8 103:-15 105:-8 106:20 107:-39 108:36 110:-12 111:-12 113:-23 115:15 116:39 118:-11 119:-8 121:-12 122:-11
make==s	0:48 1:-11 65:22 68:21 110:19
what offcut	0:25 5:10
make	0:76 2:16 3:-15 7:13 10:8 17:-9 28:-8 30:-10 33:-22 36:20 40:-11 41:-8 42:-9 47:-9 50:-14 54:-10 55:29 58:17 61:62 63:-9 65:16 68:24 69:26 77:-9 78:50 81:-9 82:-8 99:35 104:40 110:14 115:14 120:12 121:-10
offcut make	0:21
make #d	0:39
in $	0:27 1:-14 3:-26 7:32 8:-12 9:-8 19:31 22:-8 23:-10 26:-9 28:52 29:-9 31:-11 36:57 41:16 42:22 51:31 53:35 55:-9 58:13 62:16 63:13 66:-10 67:9 68:-13 76:-8 78:14 79:14 80:22 82:-19 85:9 87:23 92:-16 95:11 96:-10 110:-10 111:-11 125:-23
mm of	0:17 1:-15 8:-8 24:10 39:47 51:-10 66:43 67:-11 68:54 81:-10 82:11 88:-13
of @wire	1:56 2:-11 3:-19 4:-8 5:-8 6:-17 7:-14 8:15 9:20 12:-8 13:-9 16:-9 17:-8 18:-23 19:29 20:25 21:8 23:51 27:-10 30:-10 31:31 32:-33 33:10 37:30 38:69 39:32 40:33 41:-15 42:-11 49:-9 50:47 51:-9 55:-12 66:57 67:32 68:57 70:11 71:-14 72:-10 74:-12 78:-18 79:18 80:29 81:-22 82:-10 87:-8 88:29 91:-8 98:-11 99:-8 116:64 117:-11 118:-11 119:-8 120:-12 121:-10 125:81
&#n@wire	0:29 4:-8 5:-18 7:28 8:-39 9:-33 13:-8 17:-9 18:91 19:-23 21:-13 23:-31 24:-12 30:-8 31:15 32:-22 33:-25 36:-13 37:-9 38:24 39:41 40:-21 43:-9 50:84 51:98 66:101 67:42 69:46 70:-11 71:-11 72:21 77:-8 79:138 80:-16 81:8 82:-20 88:62 89:-10 91:-9 92:-8 95:-10 97:-11 98:-14 99:-11 104:-8 116:57 118:-16 119:-17 121:-11 125:-20
@wire $	0:29 1:53 5:-23 6:99 7:44 8:82 9:42 12:-14 13:-10 14:-8 15:-8 17:-9 19:44 21:19 22:54 23:-8 26:-8 27:-8 29:-8 31:-14 32:52 33:-12 36:31 37:-12 38:65 39:-35 40:40 50:21 51:-22 66:31 67:-31 68:10 69:-20 70:24 72:8 74:-10 76:-9 79:-17 82:-13 88:-44 116:59 117:-30 118:-24 125:17
#d $	0:11 1:37 3:-31 7:11 9:-8 14:-8 15:-9 17:-8 23:13 26:-8 32:-9 36:28 37:-10 39:56 40:8 41:89 42:53 45:-8 49:-14 50:38 51:26 66:-13 68:-13 70:19 75:28 77:-14 78:22 79:-9 80:58 81:-33 82:-24 85:11 87:8 88:33 92:13 97:-10 117:12 125:-8
fit #d	0:23 1:-8
#d of	0:-10 1:36 8:-18 9:-9 19:-9 22:-9 23:34 33:36 36:13 37:39 38:61 39:8 40:55 41:-10 51:-13 66:11 70:31 78:-12 81:-14 82:-30 88:-25
&#d@wire	0:136 1:69 3:-24 6:-8 8:-36 9:-35 18:-30 19:-29 20:-24 21:-15 22:-34 23:8 31:-20 32:-16 33:26 36:-14 38:35 39:42 40:80 41:-9 49:-11 50:10 51:61 55:-8 66:79 67:24 68:-37 74:-9 76:-9 79:-25 80:27 81:32 82:-14 88:106 92:-19 117:10 125:-23
make #n	0:13 68:27
mm $	1:-14 2:-9 3:-53 4:-10 5:12 6:-9 7:26 36:-11 37:-8 38:-8 40:-11 41:57 42:70 44:-8 45:-11 49:8 50:27 51:66 55:69 66:-24 67:11 68:-20 70:-14 76:12 77:-14 78:26 79:-8 80:25 81:-21 87:56 88:26 89:-9 91:-14 93:-9 97:-8 116:-9 117:23 125:-11
in of	0:9 39:27 66:8 68:16 81:-10 82:10
for #d	0:51 1:-11 23:-8 50:23 116:13
ther for	0:37 21:9
for #n	0:70 1:14 3:-11 4:-9 16:8 17:-9 22:65 23:-17 27:28 29:15 35:16 37:-16 46:-9 47:14 66:-16 70:-21 72:-11 82:26 91:8 97:-8 99:-10 104:20 105:31 112:22 116:35 118:-8 125:-12
can==	0:25 1:28 2:66 3:48 4:-19 5:20 8:-28 9:-19 11:-25 12:-14 13:-30 14:-10 16:14 17:27 18:8 19:-11 21:-10 22:22 26:-17 27:-16 28:-17 29:13 30:84 31:-17 32:41 33:-30 35:93 36:-19 37:19 40:-23 41:-18 42:-9 43:30 44:-17 45:-14 46:-10 47:-10 48:-11 50:-11 64:-13 65:21 66:-11 68:10 73:-8 75:-11 76:-10 77:32 78:-19 80:-12 81:39 83:-11 84:-12 89:-10 90:37 91:22 92:-10 93:-14 95:-11 96:-8 97:-19 101:54 102:49 103:-14 105:-15 106:46 107:-16 110:13 112:-11 113:57 114:-33 115:-8 116:-9 117:-11 118:-9 119:33 120:45 122:-8 124:-24 125:-15
take==	0:18 1:18 2:-11 3:-8 4:9 5:13 6:41 8:-25 9:-21 11:-22 12:-9 13:-22 14:-8 15:-12 18:-10 19:-10 20:-9 21:-10 22:-9 23:27 24:-20 25:-15 27:60 28:-13 29:-24 30:28 31:-10 32:38 33:-17 35:-12 36:66 37:-12 38:16 39:-10 40:-25 41:-8 43:-8 47:15 48:16 52:-9 53:-19 55:-9 57:29 59:-26 60:65 61:-8 63:14 64:-17 65:80 69:-9 71:-11 72:13 77:-8 81:8 82:13 85:-8 86:21 87:-9 89:-8 91:-9 97:-9 98:-10 100:45 104:-15 107:-9 108:-18 110:24 111:-16 112:29 113:-10 114:-12 116:-8 122:32 124:89 125:15
can	0:25 1:28 2:66 3:48 4:-19 5:20 8:-28 9:-19 11:-25 12:-14 13:-30 14:-10 16:14 17:27 18:8 19:-11 21:-10 22:22 26:-17 27:-16 28:-17 29:13 30:84 31:-17 32:41 33:-30 35:93 36:-19 37:19 40:-23 41:-18 42:-9 43:30 44:-17 45:-14 46:-10 47:-10 48:-11 50:-11 64:-13 65:21 66:-11 68:10 73:-8 75:-11 76:-10 77:32 78:-19 80:-12 81:39 83:-11 84:-12 89:-10 90:37 91:22 92:-10 93:-14 95:-11 96:-8 97:-19 101:54 102:49 103:-14 105:-15 106:46 107:-16 110:13 112:-11 113:57 114:-33 115:-8 116:-9 117:-11 118:-9 119:33 120:45 122:-8 124:-24 125:-15
)~",
R"~(fret can	0:26 2:15
can i	0:40 1:32 2:13 3:-8 16:35 17:23 18:8 22:23 29:9 30:28 32:11 33:-8 35:10 44:-10 46:-8 124:-32 125:53
take	1:35 2:-15 3:-8 6:36 7:-8 8:-27 9:-25 10:-11 11:-23 12:-11 13:-30 14:-10 15:-15 18:-14 19:-12 20:-14 21:-13 22:-12 23:22 24:-23 25:-20 26:-9 27:51 28:-16 29:-31 30:24 31:-12 32:30 33:-30 36:62 37:-16 38:18 39:-11 40:-28 41:-9 42:-8 43:-18 44:-12 45:-10 47:11 48:11 52:-10 53:-20 55:-16 57:26 58:-8 59:-28 60:59 61:-10 62:-10 63:11 64:38 65:61 69:-10 71:-13 72:10 73:31 74:-10 75:-8 77:-10 78:-8 82:12 83:61 84:-11 85:-9 86:20 87:-14 89:-11 91:-12 93:-9 95:-8 97:-11 98:-14 99:35 100:38 103:11 104:128 107:-21 108:-23 110:31 111:-19 112:28 113:-15 114:-16 116:-9 117:-9 118:-9 121:74 122:28 124:79
i take	0:61 1:-11 16:-8 105:10 125:-8
take in	0:10 35:21
use for	0:11 1:50 5:12 16:-9 22:-13 23:-8 73:10 83:16
take on	27:9 30:35
on slot	3:10 70:14
one==	3:45 30:10 38:30 41:-15 42:-8 71:-10 78:16 124:14
should==	0:-18 2:9 3:-9 4:24 5:44 6:17 8:-22 9:46 10:25 13:-13 16:-15 17:44 18:28 19:-10 20:-11 21:-10 22:72 23:-12 29:15 31:-25 32:-9 33:-26 35:-13 36:-9 38:-11 40:-27 41:-14 47:9 55:23 65:8 66:-16 69:39 71:-9 86:-11 98:17 99:-8 101:-9 104:14 106:29 107:-8 115:-23 117:-10 118:11 125:85
one	0:28 1:-17 2:22 3:41 4:-21 5:-14 9:-18 12:40 14:20 16:-8 17:41 19:-8 22:75 31:51 32:-12 33:-8 35:-8 36:-11 38:25 40:-33 41:-38 42:-23 43:-8 44:10 45:-24 50:12 70:-9 71:-21 72:-15 75:84 78:13 81:51 82:61 89:-18 95:-14 96:13 105:-11 111:8 112:-8 124:12
which one	12:43 22:20 125:-15
should	0:-18 2:9 3:-9 4:24 5:44 6:17 8:-22 9:46 10:25 13:-13 16:-15 17:44 18:28 19:-10 20:-11 21:-10 22:72 23:-12 29:15 31:-25 32:-9 33:-26 35:-13 36:-9 38:-11 40:-27 41:-14 47:9 55:23 65:8 66:-16 69:39 71:-9 86:-11 98:17 99:-8 101:-9 104:14 106:29 107:-8 115:-23 117:-10 118:11 125:85
should i	1:-8 2:11 5:54 9:41 15:9 16:-10 17:48 22:53 29:28 31:-15 33:-11 40:-22 41:-11 118:-8 125:-23
take for	0:47 1:-18 16:-11 27:13 83:20
#r of	0:-16 3:9 13:-13 16:40 17:-14 27:-18 42:10 43:-19 44:-9 45:24 47:-10 71:43 76:-10 77:17 78:17 80:-11 87:-12 89:47 90:20 92:11 95:9 96:10 107:-11 125:29
could==	0:32 1:99 2:14 3:44 5:27 7:11 8:-9 10:15 11:-19 13:15 15:52 16:-19 17:-20 18:31 22:38 23:-9 25:9 26:16 27:-11 30:123 33:-25 36:-40 37:-8 38:-12 39:-17 48:-12 59:-12 60:11 62:-8 63:8 64:-18 65:-8 74:-8 77:-9 91:38 95:-15 101:-9 102:-8 104:-17 107:-9 125:42
we==	0:30 1:-16 2:30 3:-16 4:-28 5:33 6:31 7:10 8:75 9:60 10:32 11:33 13:10 15:-17 16:22 19:31 20:-12 21:28 22:8 23:45 24:-22 25:22 26:-36 27:-37 28:41 29:26 30:33 31:35 32:23 33:-47 34:-12 35:-12 36:-25 37:-24 38:-21 39:-25 41:-9 42:-16 43:-23 44:-16 45:-23 50:-9 51:19 52:27 53:29 54:30 55:-22 57:9 60:-12 61:-14 63:11 64:-16 65:-24 66:24 67:-26 70:-21 71:24 72:-22 73:-12 74:-12 75:-16 76:-10 77:21 79:-9 81:-25 82:12 83:-41 85:10 86:23 87:-15 88:-11 89:-28 90:-14 91:-23 92:-12 93:-15 94:-10 97:-24 99:23 100:40 101:-12 102:12 103:-14 105:28 106:19 107:45 108:24 110:-20 111:-22 112:66 113:-24 114:-13 115:21 117:-14 118:-8 120:56 122:52 124:-17 125:33
could	0:32 1:99 2:14 3:44 5:27 7:11 8:-9 10:15 11:-19 13:15 15:52 16:-19 17:-20 18:31 22:38 23:-9 25:9 26:16 27:-11 30:123 33:-25 36:-40 37:-8 38:-12 39:-17 48:-12 59:-12 60:11 62:-8 63:8 64:-18 65:-8 74:-8 77:-9 91:38 95:-15 101:-9 102:-8 104:-17 107:-9 125:42
what could	0:31 1:11 22:10
we	0:30 1:-16 2:30 3:-16 4:-28 5:33 6:31 7:10 8:75 9:60 10:32 11:33 13:10 15:-17 16:22 19:31 20:-12 21:28 22:8 23:45 24:-22 25:22 26:-36 27:-37 28:41 29:26 30:33 31:35 32:23 33:-47 34:-12 35:-12 36:-25 37:-24 38:-21 39:-25 41:-9 42:-16 43:-23 44:-16 45:-23 50:-9 51:19 52:27 53:29 54:30 55:-22 57:9 60:-12 61:-14 63:11 64:-16 65:-24 66:24 67:-26 70:-21 71:24 72:-22 73:-12 74:-12 75:-16 76:-10 77:21 79:-9 81:-25 82:12 83:-41 85:10 86:23 87:-15 88:-11 89:-28 90:-14 91:-23 92:-12 93:-15 94:-10 97:-24 99:23 100:40 101:-12 102:12 103:-14 105:28 106:19 107:45 108:24 110:-20 111:-22 112:66 113:-24 114:-13 115:21 117:-14 118:-8 120:56 122:52 124:-17 125:33
could we	2:8 5:20 22:11 29:-8 30:36
we take	0:9
#o $	2:-11 3:-8 11:20 12:21 13:-19 16:21 28:30 29:36 36:20 37:11 47:22 53:-8 65:-8 75:12 76:19 77:-10 89:29 106:12 110:-13 112:58 118:13 125:-13
should we	5:-14 6:26 8:-13 9:28 10:27 125:-8
we use	5:32 8:-10 9:12 19:-9 20:16 25:10
can we	1:8 2:23 5:43 8:-20 9:15 11:-8 16:12 22:9 30:30 35:28
would==	0:63 1:76 2:-8 3:14 4:-11 5:72 8:-11 9:19 10:18 13:16 14:-12 15:8 16:17 18:24 19:28 21:-11 22:-9 23:-15 25:20 26:21 29:-12 30:45 33:-20 36:-18 38:19 41:-15 44:-13 47:-13 49:9 53:-10 54:-9 55:15 64:-9 74:-8 78:-9 85:13 88:-12 89:-10 101:-14 102:8 110:-8 112:15 113:8 125:11
work==	0:-13 1:-11 2:17 5:19 8:-17 9:-11 11:-16 12:24 13:-8 16:-19 17:-17 24:-14 26:-11 27:75 28:97 29:40 33:-18 35:45 38:-20 43:-11 44:-8 45:-9 47:-11 52:-8 53:55 54:-11 62:32 64:17 65:44 89:-8 98:8 103:-11 105:-9 107:58 108:51 109:-8 110:22 111:52 112:-15 115:-8 125:-41
would	0:63 1:76 2:-8 3:14 4:-11 5:72 8:-11 9:19 10:18 13:16 14:-12 15:8 16:17 18:24 19:28 21:-11 22:-9 23:-15 25:20 26:21 29:-12 30:45 33:-20 36:-18 38:19 41:-15 44:-13 47:-13 49:9 53:-10 54:-9 55:15 64:-9 74:-8 78:-9 85:13 88:-12 89:-10 101:-14 102:8 110:-8 112:15 113:8 125:11
offcut would	0:8 5:10
work	0:-14 1:-13 2:14 3:-9 4:-9 5:15 8:-29 11:-28 12:17 13:-12 14:40 15:-19 16:-34 17:-25 21:-10 22:-11 24:-16 25:63 26:-23 27:70 28:113 29:45 31:-10 32:-17 33:-13 35:35 38:-24 43:-15 44:-17 45:-16 47:-15 53:39 54:8 55:-16 57:-9 58:47 61:29 63:41 65:41 79:-8 87:-9 89:-12 95:-8 99:-13 100:-8 101:-18 102:62 103:-22 104:-8 105:-18 106:-12 107:47 108:71 109:88 111:114 115:-13 117:-8 118:-11 124:-11 125:-59
would work	5:24
the==	0:18 1:-37 2:9 4:38 5:54 6:-47 7:43 8:36 9:11 10:19 11:13 12:48 13:60 14:22 15:-9 16:33 17:35 18:32 19:24 20:36 21:10 23:-34 26:26 27:8 28:9 30:8 31:-15 32:-8 34:-24 35:34 36:16 37:-14 38:49 39:-23 41:12 42:-16 43:30 45:-10 46:-30 47:-14 48:31 49:-18 50:-57 51:-17 52:-12 53:8 55:35 57:47 58:-10 60:33 61:17 62:-9 63:15 64:14 65:-10 66:-45 67:55 68:-32 69:24 71:14 72:8 74:49 76:35 77:13 78:14 79:-22 80:15 81:52 82:12 84:19 85:25 86:44 87:8 88:37 89:-12 91:-42 93:30 94:-20 95:-35 96:-12 97:-47 98:25 99:20 100:67 102:31 103:76 104:34 105:-33 106:17 107:19 108:11 109:-13 111:-18 114:14 115:-9 116:-60 117:30 119:39 121:26 122:34 124:-17 125:79
tin==	0:89 1:23 2:65 3:-14 4:-19 5:99 6:-11 7:36 8:74 9:-23 10:-10 11:-16 12:-13 13:-19 14:-12 16:-24 17:-17 18:-22 19:-19 20:-18 21:112 22:150 24:-10 25:-19 26:-12 27:-19 28:-9 29:-17 30:-13 31:-9 32:-9 33:9 35:-14 36:-31 38:15 39:127 41:-18 42:9 43:-12 44:-8 45:-8 50:-21 51:-9 57:-11 66:-17 68:-8 69:-10 70:-19 72:80 75:32 77:-11 78:19 79:88 80:-11 81:11 82:13 85:-11 87:-8 88:-13 89:-19 91:-15 92:-9 93:-8 97:-10 99:-8 100:-10 101:-8 102:-8 103:-12 104:-9 106:-8 108:-9 115:-9 117:-9 121:-10
offcut in	0:16
tin	0:87 1:23 2:65 3:-24 4:-19 5:99 6:-11 7:36 8:74 9:-23 10:-10 11:-16 12:-13 13:-19 14:-12 16:-24 17:-17 18:-22 19:-19 20:-18 21:112 22:150 24:-10 25:-19 26:-12 27:-19 28:-9 29:-17 30:-13 31:-9 32:-9 33:9 35:-14 36:-33 38:15 39:127 41:-21 43:-12 44:-8 45:-8 50:-21 51:-9 57:-11 66:-17 68:-8 69:-10 70:-19 72:76 75:32 77:-11 78:46 79:88 80:-11 81:11 82:13 85:-11 87:-8 88:-13 89:-19 91:-15 92:-11 93:-8 97:-10 99:-8 100:-10 101:-8 102:-8 103:-12 104:-9 106:-8 108:-9 115:-9 117:-9 121:-10
the tin	0:42 1:40 2:19 3:-13 4:-17 5:79 6:-8 7:27 8:64 9:-17 10:-8 11:-12 12:-10 13:-10 14:-9 16:-17 17:-12 18:-12 19:-9 20:-15 21:101 22:86 25:-17 26:-10 27:-15 28:-8 29:-13 30:-10 33:25 35:-10 36:-25 38:20 39:103 41:-17 42:10 43:-9 50:-13 55:-11 57:-10 66:-8 69:-8 70:-16 72:71 75:37 77:-10 78:27 79:43 80:-9 81:11 82:-11 85:-9 88:-8 89:-18 91:-13 100:-9 103:-11 115:-8
would fit	5:14
piec would	0:25
would do	0:30 3:-10 5:35
do slot	0:20 4:20
fit in	5:14
offcut==s	1:-9 5:25
#r on	4:-9 18:-14 44:12 75:9 82:49 89:-11 91:49 95:21
on @job	0:28 1:-16 2:15 4:11 5:13 11:-17 13:24 15:-32 17:38 24:11 27:-10 33:35 36:22 43:-18 45:23 47:8 65:-8 70:-11 73:17 74:25 78:24 90:9 92:20 93:46 95:25 96:12 97:9 107:-19 108:-16 113:-13 114:-11 115:-8 125:-30
do for	0:8 3:29 4:-12 5:22 10:-14 13:60 17:-11 27:-8 29:-16 35:11
)~",
R"~(&#n#o	0:-29 3:22 4:24 6:-8 11:-28 12:28 13:-23 16:-13 17:-15 27:-9 28:-14 29:35 30:-12 33:14 36:44 42:16 43:-12 45:28 47:79 54:47 65:13 70:11 71:10 77:13 89:-31 90:-11 91:15 92:9 97:18 99:11 102:14 108:-8 112:-10 118:11 125:-13
the fret	0:-27 2:81 4:34 5:-15 13:-34 15:-12 16:13 18:-9 27:-33 32:-8 33:41 36:-8 41:41 42:9 43:46 45:-17 71:19 72:-19 75:45 77:31 78:14 79:-12 81:-8 89:-11 90:25 91:-16 93:-25 95:17 96:10 103:26 107:23 108:30 125:-32
fret fret	41:9 44:12 45:8 75:13 78:17 91:14 92:-10 93:-8 97:13
on job	0:49 1:50 2:36 3:-23 4:8 6:-9 11:-19 13:-57 15:37 17:54 23:-15 24:40 27:23 28:-9 29:-9 30:-14 33:20 37:-8 41:9 43:66 44:41 45:17 47:-18 48:-18 54:-8 64:18 65:-16 70:-8 72:-11 73:-10 75:28 76:-14 77:37 82:-9 83:-9 84:29 89:-34 90:-18 91:54 92:-8 94:27 95:15 96:-14 97:-19 99:-8 105:-30 107:-27 108:71 111:-13 113:-25 115:-9 125:-14
anyth in	0:24 22:14
tin for	0:30 1:-8 5:21 38:37 39:-16
for fret	0:17 3:-16 12:43 16:20 25:-8 29:-8 36:45 41:16 43:-9 70:8 75:-11 82:9 91:14 92:-9 93:-12 107:14 125:-8
fret #r	4:8 16:9 27:-10 42:16 43:-9 44:14 45:17 71:28 75:9 77:26 80:-10 95:20 97:18 125:-12
have==	0:34 1:8 2:-16 5:-39 8:44 10:23 11:33 12:49 14:54 16:-45 17:-37 18:-15 19:29 20:-10 21:36 22:13 23:35 25:39 26:66 27:-20 28:-35 29:21 30:19 31:55 33:25 34:17 35:-41 36:-11 37:-12 38:39 40:-17 41:-16 44:-11 45:20 47:-16 48:-9 51:8 52:-10 53:-19 54:-13 57:-15 58:-11 60:-9 62:-10 64:-14 66:35 67:-9 68:-11 69:-12 71:19 73:-9 74:23 75:-13 77:-17 79:-28 80:-12 81:23 82:-16 83:-11 84:-14 87:-13 88:-9 89:-18 90:18 92:-10 93:-12 95:8 97:-12 98:21 99:37 100:82 101:8 102:-15 104:-17 105:17 106:-21 107:-9 111:-10 112:-13 113:-13 115:18 117:-10 118:-9 119:13 121:11 122:-10 123:-8 125:44
have	0:34 1:8 2:-16 5:-39 8:44 10:23 11:33 12:49 14:54 16:-45 17:-37 18:-15 19:29 20:-10 21:36 22:13 23:35 25:39 26:66 27:-20 28:-35 29:21 30:19 31:55 33:25 34:17 35:-41 36:-11 37:-12 38:39 40:-17 41:-16 44:-11 45:20 47:-16 48:-9 51:8 52:-10 53:-19 54:-13 57:-15 58:-11 60:-9 62:-10 64:-14 66:35 67:-9 68:-11 69:-12 71:19 73:-9 74:23 75:-13 77:-17 79:-28 80:-12 81:23 82:-16 83:-11 84:-14 87:-13 88:-9 89:-18 90:18 92:-10 93:-12 95:8 97:-12 98:21 99:37 100:82 101:8 102:-15 104:-17 105:17 106:-21 107:-9 111:-10 112:-13 113:-13 115:18 117:-10 118:-9 119:13 121:11 122:-10 123:-8 125:44
^ have	0:9 8:-15 10:13 11:-14 23:24 31:78 63:8 94:-11 108:21 115:8 125:16
have we	0:23 4:-16 5:-8 6:-9 8:41 9:25 11:12 12:47 13:13 14:-10 16:-8 21:28 22:-9 23:23 25:20 26:-9 27:-31 31:54 32:9 33:-16 125:-12
we anyth	11:-11 23:31
tin that	0:11 22:21
that would	0:32
ther anyth	11:11 13:-11 17:31 22:30
the slot	0:-23 3:8 4:40 13:-28 16:-15 17:-10 18:76 27:13 33:13 36:-20 42:-8 43:45 64:-8 70:-29 72:12 74:26 75:49 76:16 77:-12 78:-18 81:-8 82:23 87:-8 90:-8 91:62 103:42 104:15 107:27 108:-9 125:-17
plac==e	1:43 9:14 14:30 25:18 28:9 29:-10 44:13 53:19 54:8 87:11 98:9 108:14 111:-8 125:-18
end==s	0:-16 1:63 3:104 13:-9 16:-13 17:-11 27:49 29:-11 30:21 39:40 42:23 43:61 44:-16 46:-11 50:-8 71:-16 72:-14 74:-14 75:-22 77:-18 78:27 79:12 80:20 92:-14 93:15 107:21 125:-8
plac	0:-8 1:48 9:14 14:30 25:18 28:9 29:-10 38:15 44:13 50:-16 53:19 54:8 72:16 75:13 82:-9 87:11 97:-10 98:8 108:14 111:-8 116:23 125:-19
^ plac	1:23 116:13
@wire piec	1:11 69:14 70:13 78:-9 80:-13
piec #n	0:-115 1:118 3:22 4:-23 5:-8 13:-18 15:-8 16:-12 17:-14 22:53 23:57 29:-12 30:-8 33:89 36:115 37:97 38:68 39:-12 40:95 41:-10 42:-8 43:-11 44:-8 45:-15 65:-15 69:76 70:57 71:-31 73:-10 75:-21 77:-16 78:-12 80:8 81:-13 82:-44 83:-9 89:-15 91:-15 92:-14 93:-10 95:-12 96:-12 97:-20 101:-8 105:-9 113:-8 114:-11 125:60
#n piec	1:-10 33:16 36:-16 37:29 38:15 70:26 78:-33
number	1:48 2:-12 3:27 4:-28 5:-23 10:-13 11:-16 12:-10 13:26 14:10 15:-19 17:-21 18:-10 22:-18 23:28 25:-10 28:-8 29:-26 30:-19 31:-8 36:65 37:39 38:43 39:-10 40:58 41:-12 42:-18 45:43 48:-8 50:-8 55:-12 59:17 60:44 64:14 65:19 66:-8 69:8 70:32 71:-12 73:18 75:-19 76:-9 77:-8 78:-8 81:15 82:14 83:-10 84:-10 87:-9 89:-11 92:10 94:-14 95:11 96:-17 99:13 100:-13 101:67 102:51 103:-8 104:-13 105:-14 106:29 107:-11 108:-12 110:-8 111:-11 113:-10 114:-14 115:-9 116:16 117:-21 118:14 120:-8 125:20
piec number	23:13 36:11 38:14 69:10 78:-10
number #n	1:50 2:-11 3:28 4:-25 5:-21 10:-12 11:-8 13:61 15:-14 16:9 17:-12 18:-8 22:-17 23:34 27:-11 29:-16 30:-17 36:66 37:39 38:45 39:-9 40:61 41:-12 42:-18 45:45 60:-8 64:18 65:22 69:10 70:34 71:-11 73:20 75:-19 76:-9 78:-8 81:16 82:15 84:-9 89:-9 92:10 94:-13 95:12 96:-16 98:-9 99:-24 101:26 102:19 104:-10 105:-12 106:37 107:-10 108:-10 111:-9 113:-9 114:-13 116:17 117:-19 118:16 119:9 125:-50
piec #d	1:-11 33:9 36:9 37:24 69:15 70:15 78:-19 80:-16
one_raw	3:27 46:-9 80:9
end one_raw	3:27 46:-9 80:9
piec the	1:9 36:15 38:8 78:-14
the #d	0:-46 1:29 3:12 4:-9 7:-11 16:-11 18:-22 23:33 36:150 37:63 38:52 39:-18 40:90 41:-38 42:-12 50:-12 66:-11 69:-9 70:112 72:-8 74:-17 75:-8 76:-17 78:-23 80:-8 81:35 83:-8 88:-18 92:-14 125:74
#d long	1:19 3:18 69:29 82:8
~ length	3:10 85:16 98:-13
mm wire	39:9 46:8 82:-12
#d wire	50:-11 66:19 69:9
mm piec	0:-14 1:15 39:14
piece	1:51 3:-9 4:-18 5:31 6:36 8:97 9:-23 10:-10 11:-9 13:-18 15:-20 16:-12 17:-12 18:-10 19:-17 20:-9 21:-9 22:98 23:58 24:-8 25:-12 26:-8 27:-15 29:-14 32:-10 33:-15 36:14 37:12 38:43 39:14 40:68 41:-9 42:-11 43:-9 45:-8 50:-10 65:-9 66:-12 71:-19 75:-10 77:-8 78:-15 79:57 81:84 82:80 83:48 85:-8 89:-11 91:-12 95:-11 96:-9 97:-17 105:-9 113:-8 125:-28
piec piece	36:-22 38:15 70:21 78:-9
piece #n	0:-16 1:70 4:-13 15:-16 22:-10 23:22 36:19 37:16 38:50 40:72 70:8 71:-14 75:-9 78:-12 81:81 82:45 91:-8 96:-8 97:-14 125:-19
#d piec	37:-10 38:19 70:9 78:-12
in wire	21:12
&#d#n@wire	0:-19 3:-10 18:9 22:-9 36:29 38:-14 39:69 40:-27 50:52 66:-10 67:-8 68:28 70:30 72:-12 74:-13 76:9 79:-11 80:22 81:48 82:16 85:-9 116:26 117:-8 125:-17
plac #n	1:9 44:14
&#d#n	0:-63 1:-19 3:43 4:-11 16:32 17:-12 18:8 23:-8 33:-14 36:-13 37:-29 38:-34 39:-24 40:-45 41:60 42:58 43:-14 44:-13 45:-13 50:-10 69:120 70:17 71:-10 72:11 74:56 75:13 76:47 77:-16 78:14 81:14 82:13 87:8 88:-9 89:-18 90:-10 91:-17 92:88 95:-14 97:-15 117:27 120:-8 125:45
#d job	0:-11 2:12 3:-35 36:13 37:9 42:17 74:20 75:-9 78:30 92:-12
are==	0:12 3:-10 4:12 5:-41 6:-23 7:38 8:22 9:30 10:-22 11:18 12:74 13:24 15:-20 16:-16 17:13 18:-8 19:-12 20:-17 21:-19 22:-10 23:23 26:32 27:17 28:66 29:16 30:-26 31:53 32:47 33:-40 34:-9 35:11 36:-15 37:-14 38:-15 39:-17 40:-15 41:-17 42:-22 43:30 45:-15 47:-23 48:15 50:-34 51:-17 52:27 54:47 55:39 57:-13 58:-17 60:-8 61:-8 63:-9 64:-13 65:-10 66:40 68:11 69:-11 71:21 73:-11 74:30 75:-10 77:-16 78:-21 79:-12 80:12 81:44 82:8 83:-8 84:10 86:-9 87:-20 88:9 89:10 90:9 91:25 92:-11 94:-11 95:22 96:15 97:-13 98:22 99:28 100:-18 102:61 103:-17 104:-16 105:-27 106:-13 107:12 108:29 109:26 110:-13 111:-15 112:12 114:-14 115:-19 116:9 119:-12 121:13 124:-14 125:-15
any==	0:22 1:64 3:-16 4:-10 5:-9 6:-9 8:20 10:-9 11:42 12:9 13:-15 15:-10 16:-11 17:40 18:13 19:-14 20:-15 22:76 23:36 24:-8 25:-20 26:21 27:-8 28:-13 29:-12 30:10 31:32 33:-13 36:-13 37:-21 38:68 42:9 43:-15 47:20 50:-12 52:-9 53:-18 55:-9 57:10 59:-12 60:38 62:32 63:-12 64:-9 65:42 66:-10 69:-8 72:-13 78:-8 79:-14 84:21 86:16 87:12 89:-10 92:-12 93:-8 99:-13 100:57 101:-14 102:-8 107:-13 108:-12 109:15 110:-15 111:-10 112:20 116:-12 117:-8 118:-10 120:-8 121:53 125:-42
are	0:12 3:-10 4:12 5:-41 6:-23 7:38 8:22 9:30 10:-22 11:18 12:74 13:24 15:-20 16:-16 17:13 18:-8 19:-12 20:-17 21:-19 22:-10 23:23 26:32 27:17 28:66 29:16 30:-26 31:53 32:47 33:-40 34:-9 35:11 36:-15 37:-14 38:-15 39:-17 40:-15 41:-17 42:-22 43:30 45:-15 47:-23 48:15 50:-34 51:-17 52:27 54:47 55:39 57:-13 58:-17 60:-8 61:-8 63:-9 64:-13 65:-10 66:40 68:11 69:-11 71:21 73:-11 74:30 75:-10 77:-16 78:-21 79:-12 80:12 81:44 82:8 83:-8 84:10 86:-9 87:-20 88:9 89:10 90:9 91:25 92:-11 94:-11 95:22 96:15 97:-13 98:22 99:28 100:-18 102:61 103:-17 104:-16 105:-27 106:-13 107:12 108:29 109:26 110:-13 111:-15 112:12 114:-14 115:-19 116:9 119:-12 121:13 124:-14 125:-15
^ are	1:33 8:32 9:9 11:31 17:23 25:17 28:73 29:10 31:10 32:19 52:-9 53:-26 54:-13 108:31 112:-14 125:-8
)~",
R"~(are the	1:8 4:61 12:-11 13:-19 14:31 17:-15 25:-29 28:18 29:38 32:36 35:26 70:13 74:-9
any	0:22 1:64 3:-16 4:-10 5:-9 6:-9 8:20 10:-9 11:42 12:9 13:-15 15:-10 16:-11 17:40 18:13 19:-14 20:-15 22:76 23:36 24:-8 25:-20 26:21 27:-8 28:-13 29:-12 30:10 31:32 33:-13 36:-13 37:-21 38:68 42:9 43:-15 47:20 50:-12 52:-9 53:-18 55:-9 57:10 59:-12 60:38 62:32 63:-12 64:-9 65:42 66:-10 69:-8 72:-13 78:-8 79:-14 84:21 86:16 87:12 89:-10 92:-12 93:-8 99:-13 100:57 101:-14 102:-8 107:-13 108:-12 109:15 110:-15 111:-10 112:20 116:-12 117:-8 118:-10 120:-8 121:53 125:-42
#d any	1:12 38:8
any use	1:26
use on	5:40
&#d@job	1:21 16:8 18:-16 41:-9 74:93 87:17
is #d	0:-14 1:37 3:58 8:41 18:-12 23:13 36:-12 38:-13 39:-17 40:-15 41:34 50:-8 55:-10 66:-11 68:29 74:-9 76:74 77:-10 80:28 85:19 87:-19 88:42 92:37 121:15 125:-22
of any	1:11 8:-12 9:36
for @job	0:-29 1:-8 2:28 3:-10 4:33 5:16 6:-11 13:33 15:-14 16:13 17:-20 18:19 20:-8 23:19 26:13 27:-13 29:-28 30:-9 36:25 37:18 38:27 43:43 44:10 46:-9 64:-9 65:-12 73:25 77:8 83:15 84:39 91:19 105:12 106:8 113:-13 114:-8 125:-19
good==	0:-18 1:51 3:20 8:-26 9:36 11:-8 13:-8 18:37 22:18 23:-28 31:-10 40:36 41:17 45:21 50:-8 55:8 62:26 67:9 77:20 86:21 89:12 93:9 100:21 102:14 115:-8 125:-10
are number	1:11
#n any	1:9 38:18 65:32 84:17 87:10 100:15 125:-22
good	0:-21 1:51 3:20 8:-26 9:36 11:-8 13:-8 18:36 19:20 22:17 23:-36 31:-11 40:35 41:17 45:21 55:8 62:26 67:9 77:20 86:21 89:12 93:9 100:21 102:14 115:-8 120:9 125:-10
any good	1:11 18:43 22:8
good for	1:64 22:16 23:-22 77:23
are #d	18:13 68:19 74:14 81:-9
@wire of	39:18 66:-20 68:10 81:25 116:8
^ could	1:67 3:49 7:11 10:17 13:23 15:59 16:-11 17:-10 18:37 26:21 29:-11 30:49 33:-11 36:-35 38:-9 64:-16 74:-8 95:-10
could i	0:12 3:53 7:12 10:18 11:-10 18:26 22:23 26:21 30:28 33:-10 36:-25 125:-46
use number	36:35
#n for	0:-35 3:-35 4:-19 6:-10 16:-17 29:-10 30:11 33:-8 36:91 37:72 38:22 40:-9 42:55 43:-8 44:11 45:-12 47:9 65:25 70:26 73:18 78:11 81:18 83:-15 84:-12 91:-12 95:-8 97:-8 105:9 114:-9 115:17
^ can	0:-12 1:77 3:12 5:11 6:8 7:11 9:13 10:19 16:26 17:29 20:10 22:-9 29:39 30:65 35:-41 37:26 38:-9 44:-11 46:-8 91:28 124:-30 125:48
can use	0:-11 1:12 101:13 102:56
may==	0:-14 1:29 3:10 12:-9 14:10 18:-8 19:14 26:8 27:-11 30:8 35:23 38:38 43:19 55:15 58:32 61:14 83:-9 87:17 102:22 106:-8 110:-14 114:10 125:34
may	0:-15 1:29 3:10 12:-9 13:-8 14:10 18:-8 19:13 20:11 21:27 27:-12 30:8 35:23 38:37 43:19 55:15 58:31 61:14 83:-10 87:17 102:21 106:-10 110:-14 114:10 125:33
^ may	1:22 3:11 11:12 14:14 17:14 19:16 26:11 35:27 125:-10
use #d	1:35 3:-16 36:53 37:-10
@wire for	6:29 7:-10 8:-9 9:10 20:42 23:-14 37:20 39:28
use the	5:16 16:19 18:9 36:15 101:14 125:-8
&#d@job@wire	18:25 37:18 74:-10
may we	1:9 29:11
use #n	1:9
#d on	36:17 41:49 92:-10
wher==e	0:-22 1:180 3:26 4:53 5:-24 6:50 8:-11 9:-21 10:8 11:-9 13:57 15:-8 16:48 17:35 18:-14 19:12 20:72 23:-14 25:-15 26:-8 27:-12 29:25 30:-8 32:29 33:18 35:11 37:-8 38:-14 39:-26 40:-23 43:-12 50:-11 51:-21 61:8 69:-11 70:-8 74:-8 75:-11 89:11 91:-8 101:-10 107:-16 108:-17 125:28
doe==s	0:-27 1:57 3:20 5:11 6:35 7:-9 8:-19 9:44 10:-20 11:-19 12:-19 14:50 15:90 16:-12 17:20 18:54 20:18 21:-13 22:12 23:11 24:12 25:40 27:27 28:70 29:23 30:8 32:70 33:-53 35:76 36:-13 37:-9 38:-13 39:-10 41:-12 43:-15 44:-9 45:-14 47:-16 50:-8 53:-16 61:-16 62:16 63:-20 64:32 65:35 71:-9 73:-36 74:-9 75:-18 77:-15 78:-8 83:-8 87:-10 89:12 90:-8 91:-12 92:-13 93:-9 95:-8 97:-11 99:-12 101:18 102:-8 104:8 105:-10 107:-18 108:-14 109:19 110:-12 113:-16 115:-9 121:-14 124:-13 125:35
belong==	1:20 12:15 65:13
wher	0:-22 1:180 3:26 4:53 5:-24 6:50 8:-11 9:-21 10:8 11:-9 13:57 15:-8 16:48 17:35 18:-14 19:12 20:72 23:-14 25:-15 26:-8 27:-12 29:25 30:-8 32:29 33:18 35:11 37:-8 38:-14 39:-26 40:-23 43:-12 50:-11 51:-21 61:8 69:-11 70:-8 74:-8 75:-11 89:11 91:-8 101:-10 107:-16 108:-17 125:28
^ wher	1:22 2:-9 4:33 5:-21 6:35 8:-8 9:-15 13:32 16:32 17:56 19:20 20:60 29:20 32:32 33:16 35:13 38:-8 43:-9 75:-10 107:-12 108:-15 125:9
doe	0:-27 1:57 3:20 5:11 6:35 7:-9 8:-19 9:44 10:-20 11:-19 12:-19 14:50 15:90 16:-12 17:20 18:54 20:18 21:-13 22:12 23:11 24:12 25:40 27:27 28:70 29:23 30:8 32:70 33:-53 35:76 36:-13 37:-9 38:-13 39:-10 41:-12 43:-15 44:-9 45:-14 47:-16 50:-8 53:-16 61:-16 62:16 63:-20 64:32 65:35 71:-9 73:-36 74:-9 75:-18 77:-15 78:-8 83:-8 87:-10 89:12 90:-8 91:-12 92:-13 93:-9 95:-8 97:-11 99:-12 101:18 102:-8 104:8 105:-10 107:-18 108:-14 109:19 110:-12 113:-16 115:-9 121:-14 124:-13 125:35
#n doe	16:-8 38:8 73:-31 89:70 91:8 114:11
doe #n	2:12 3:23 5:18 16:-8 75:-13 89:-40 125:65
belong	1:19 12:12 14:16 59:15 65:33
#n belong	1:10 65:16
belong $	1:12
go==	0:12 1:52 2:-8 4:-9 8:-9 13:-12 17:-13 19:-21 20:56 21:-10 22:12 23:-11 24:-8 27:27 28:-8 29:11 37:-10 38:123 40:-15 43:8 44:-18 47:13 50:-11 57:26 62:19 65:-15 75:-11 81:17 82:19 84:82 95:-8 98:25 102:-8 104:24 107:12 108:13 113:-9 115:-9
#n would	1:10
would #n	0:-19 1:32 3:10 18:-11
go	0:12 1:52 2:-8 4:-9 8:-9 13:-12 17:-13 19:-21 20:56 21:-10 22:12 23:-11 24:-8 27:27 28:-8 29:11 37:-10 38:123 40:-15 43:8 44:-18 47:13 50:-11 57:26 62:19 65:-15 75:-11 81:17 82:19 84:82 95:-8 98:25 102:-8 104:24 107:12 108:13 113:-9 115:-9
#n go	1:32 38:16 70:10 75:-9 98:29 125:-15
go $	1:35 22:18 33:10 38:40 39:-10 57:12 70:10 75:-9 84:42
wher on	1:18
@job doe	114:15
fit $	0:51 1:11 4:-8 35:16 82:10
@job would	18:15
@job could	0:-8 2:16
#n fit	1:10
would the	5:8 10:18 18:22 27:21
#d go	38:10 39:11
wher would	1:31 17:11 19:23
would a	3:18 16:12 41:-9
a #n	1:40 22:-9 50:15 79:-9 99:14 104:32
a #d	0:-13 1:22 3:51 37:-8 39:23 125:18
this==	0:-21 1:18 5:-9 8:-25 10:20 11:42 12:-13 13:-15 14:11 15:-8 16:-18 17:14 19:-20 20:54 21:18 22:-8 23:-10 25:8 27:-11 28:11 29:38 30:21 31:-11 32:-16 35:-13 36:-8 39:11 41:14 43:9 50:13 52:-41 53:35 54:49 59:13 71:8 72:-9 74:8 75:-12 78:-10 91:-9 95:20 97:8 101:11 105:15 108:-14 109:-35 110:72 111:35 112:-9 115:-11 117:14 125:8
wher doe	1:26 32:12
this	0:-25 1:17 5:-13 6:-9 8:-27 10:20 11:34 12:-14 13:-26 14:9 15:-10 16:-21 17:9 19:-20 20:53 21:18 22:-9 23:-12 24:-10 27:-13 29:37 30:19 31:-12 32:-16 35:-15 36:-9 39:8 41:9 43:34 44:8 48:-8 50:9 52:-42 53:35 54:63 55:-8 59:11 61:-9 62:-10 63:-9 64:-8 72:-10 74:10 75:-20 77:13 78:-11 89:-9 91:-15 95:39 96:9 97:30 99:-9 100:-11 101:36 102:-13 105:10 107:22 109:-37 110:59 111:71 112:-11 113:-8 115:35 117:17
in fret	3:12 91:8
fret of	0:12 1:-8 2:42 3:29 5:30 6:15 9:-22 13:13 16:-33 17:-21 22:-10 24:10 30:-8 36:13 37:11 39:18 43:56 45:40 50:-8 70:-10 71:-25 72:43 75:51 78:-12 82:-15 89:-11 90:8 91:-11 92:-8 93:-24 95:-12 96:17 97:-9 107:21 108:20 125:-23
@wire go	1:8 18:12 19:-13 20:37
doe the	0:12 1:-8 5:-18 6:17 8:-13 9:12 12:-10 13:-22 14:-12 15:23 17:26 18:13 20:25 23:31 25:71 28:9 29:-9 31:29 33:-11 64:22 65:12 125:-13
piec of	39:13 68:14
wher could	1:15
could a	30:10
wher should	6:17 29:10
mm offcut	1:11
offcut of	1:19
doe a	125:60
in @wire	0:21 8:-9 21:59 22:9 81:24 82:-8
mm @wire	1:13 38:31 39:11
#d @wire	0:37 1:-9 8:-8 18:-16 22:-11 23:-10 36:47 37:39 38:-23 40:37 50:-12 51:-9 70:28 81:58 82:40 88:-10 125:-11
mm the	81:20
@wire offcut	1:14
to==	0:-21 2:28 3:-39 4:39 5:8 6:-14 7:-14 8:-35 9:18 10:74 11:20 12:-14 13:40 14:-8 15:40 16:11 17:11 18:36 19:-14 21:-16 22:9 23:-17 24:-14 25:-44 26:-38 27:10 28:11 29:17 30:18 32:-14 33:-34 34:-9 36:-57 37:11 39:-12 41:-42 42:-41 43:-33 44:40 46:38 47:12 49:-22 51:16 52:-10 53:26 54:8 55:73 56:24 57:53 58:17 59:14 60:-26 61:69 62:-23 63:28 64:60 65:43 66:-16 67:-26 69:36 70:-13 71:-13 72:23 73:-24 74:-16 75:110 76:-12 77:-42 78:-29 79:-24 80:-23 81:36 82:-44 83:40 84:-29 85:-24 87:9 88:11 89:29 90:-30 91:-21 92:-12 93:9 94:-15 95:-16 97:-21 98:28 99:26 101:-15 104:-14 105:13 106:-34 107:16 110:43 111:26 112:-36 113:-23 114:16 116:-13 117:-50 118:47 119:-10 120:20 121:17 122:13 124:24 125:37
put==	0:-11 1:15 2:-11 3:-9 4:-11 5:-10 9:22 10:-18 11:-16 13:-24 14:-8 16:11 17:-16 20:-10 22:-11 23:50 25:-12 26:8 27:-15 29:-18 30:-14 31:-12 33:18 35:-8 36:75 37:73 38:-10 39:33 40:-8 43:-16 44:-9 45:-13 50:51 55:35 58:22 62:37 63:-13 64:47 65:-9 66:-13 68:-15 69:28 70:-10 72:14 75:-11 76:8 77:-10 78:-14 82:-19 83:43 84:14 85:-8 87:-12 88:-10 89:-13 91:-16 95:36 96:11 97:-10 98:10 101:-8 102:19 103:9 104:14 105:12 107:-15 108:13 110:-9 113:15 114:-8 115:8 117:-8 120:14 121:-12 124:-9
)~",
R"~(to	0:-22 2:28 3:-40 4:35 5:8 6:-15 7:-15 8:-35 9:18 10:74 11:19 12:-14 13:40 14:-8 15:39 16:10 17:11 18:36 19:-14 21:-16 22:9 23:-18 24:-14 25:-44 26:-39 27:9 28:-17 29:15 30:17 32:-14 33:-35 34:-10 36:-58 37:9 39:-12 41:-43 42:-41 43:-34 44:38 45:-9 46:38 47:11 49:-22 51:16 52:80 53:14 54:33 55:71 56:24 57:53 58:17 59:13 60:-26 61:68 62:-23 63:28 64:59 65:43 66:-16 67:-26 69:36 70:-17 71:-14 72:22 73:-25 74:-16 75:101 76:-12 77:-42 78:-30 79:-25 80:-23 81:35 82:-45 83:39 84:-29 85:-24 87:9 88:11 89:17 90:-31 91:-22 92:-13 93:8 94:-16 95:-16 97:-23 98:27 99:23 101:-19 104:-14 105:42 106:-35 107:15 109:65 110:28 111:11 112:-39 113:-23 114:15 116:-13 117:-50 118:44 119:-10 120:19 121:16 122:12 124:23 125:30
wher to	1:42 6:18
put	0:-11 1:15 2:-11 3:-9 4:-11 5:-10 9:22 10:-18 11:-16 13:-24 14:-8 16:11 17:-16 20:-10 22:-11 23:50 25:-12 26:8 27:-15 29:-18 30:-14 31:-12 33:18 35:-8 36:75 37:73 38:-10 39:33 40:-8 43:-16 44:-9 45:-13 50:51 55:35 58:22 62:37 63:-13 64:47 65:-9 66:-13 68:-11 69:28 70:-10 72:14 75:-11 76:8 77:-10 78:-14 82:-19 83:43 84:14 85:-8 87:-12 88:-10 89:-13 91:-16 95:36 96:11 97:-10 98:9 101:-8 102:19 103:9 104:14 105:12 107:-15 108:13 110:-9 113:15 114:-8 115:8 117:-8 120:14 121:-12 124:-9
to put	1:23 6:19
put a	1:10 37:19 39:-8 49:8 98:9 125:19
put the	1:11 3:8 6:16 17:8 29:10 36:-8 37:31 50:11 67:13 75:-9 76:12 102:8 103:8 108:31 125:-9
offcut $	1:13
put #n	3:9 36:17 50:9 104:21
mm fret	0:18 1:8 3:17 39:-8
the #n	0:77 1:-9 2:-10 3:-9 4:22 5:18 6:-18 7:-10 11:-13 12:29 13:14 15:38 16:-26 24:10 27:-36 28:-9 29:26 30:19 31:44 33:25 36:-26 37:-9 38:42 39:-10 40:-13 41:-9 42:44 43:-25 44:-20 45:-23 47:-10 48:20 50:-40 54:-12 65:10 66:-18 67:22 69:-11 70:9 71:-13 73:-9 76:-8 78:16 81:57 82:38 83:20 84:-13 87:14 89:-16 90:-11 91:-11 92:-10 94:8 95:-12 97:-10 107:17 108:-10 112:30 115:-8 116:-9 117:-12 125:-17
what slot	0:-22 1:45 13:20
slot for	0:-29 1:56 4:20 107:13
for a	1:9 5:-8 23:15 27:14 30:49 35:-9 39:-15 63:10 98:12
take==s	0:-11 1:17 4:-9 5:-9 13:-8 27:-10 32:-9 33:-13 35:15 43:-10 64:56 65:-19 73:34 83:58 99:42 103:17 104:144 107:-12 121:70 124:-9 125:-18
which slot	0:-50 1:86 4:-14 13:80 39:-11
slot take	0:-8 1:21 104:12
take this	1:8
this #n	0:-8 29:-9 30:9 39:27 93:11
for this	19:-8 20:16 26:13 28:12
fret $	2:40 4:-20 13:61 16:-11 17:31 27:76 36:27 39:-16 41:-11 43:-12 45:-8 77:-18 79:17 93:44 104:35 108:-8 125:-11
piec $	0:10
for number	0:29 1:35 3:29 16:-9 22:-9 30:-9 36:-8 42:-23 43:18 47:15
take piece	1:13
take #d	1:9
take #n	1:8 81:14 99:29 120:9 121:30 125:40
wher do	4:20 6:17 9:-11 17:35 29:10 32:38 75:-10 125:-12
do we	0:14 2:11 4:15 5:-15 6:25 7:20 8:61 9:10 10:31 11:21 13:-12 16:13 18:11 21:-9 22:26 25:43 30:-9 31:-17 32:70 33:-17 35:-14 39:-9 66:-10 115:-10 120:-8 122:-14 125:-24
wher can	1:9 35:18
we put	1:16 8:20 23:22
put #d	36:17 55:23
i put	0:8 3:18 9:32 10:-14 15:10 16:26 18:16 29:-14 31:-9 36:19 50:16 67:-11 72:8 75:-14 76:11 79:8 96:12 103:9 125:-8
put piece	36:12
use a	9:10
@wire fret	0:20 39:-17 46:12 72:11 79:12
need==ed	1:36 23:-17 25:15 38:37 44:14 83:11 106:12 125:-11
what is	1:26 2:8 5:8 6:-8 7:-8 8:51 9:49 10:13 11:41 12:74 13:-8 14:-15 15:-23 16:-9 17:29 18:-21 19:30 20:18 21:13 24:-20 26:12 27:63 28:-33 29:31 31:33 32:44 33:-14 35:15 43:-16 51:-10 55:-11 84:47 87:-10 94:-10 101:-8 103:-18 104:9 110:-9 112:-8 113:-8 118:-8 119:-8 121:-9 125:50
is piece	1:25
need	0:27 1:72 5:-16 6:58 7:54 8:-30 9:27 10:11 11:20 12:-15 14:-8 15:-10 16:-9 17:-28 18:-11 19:-10 20:13 21:-13 23:-37 24:-11 25:46 26:-27 28:8 29:-25 30:-15 32:12 33:32 36:-16 37:-17 38:79 39:-11 40:-16 41:-12 42:16 43:-13 47:28 48:-10 49:-8 50:-10 52:-20 53:-13 55:-12 57:19 58:-10 63:-9 64:-10 65:-22 67:-8 75:-10 76:-8 77:-12 83:30 84:9 87:-9 89:-11 91:-8 93:-9 98:-11 99:36 100:-27 101:-17 102:-11 103:164 105:32 106:88 107:-13 108:-21 110:-10 114:21 118:-12 121:22 122:13 124:-10 125:43
#n need	6:27 38:9 83:24 103:13 114:31 125:-15
need for	1:8 5:-14 6:33 7:8 23:-15 25:17 83:11
for $	0:-12 1:71 5:-8 8:-16 9:-12 11:33 19:-10 21:27 22:-10 23:48 25:76 28:-9 29:-32 31:43 37:-8 47:-12 50:19
is number	1:11 17:-9 23:28 106:11
#n good	1:26 23:-14
plan==ned	1:12 11:-14 23:-11 25:-11 29:68 83:42 84:-12 104:21
plan	1:10 2:53 5:114 6:-23 8:-8 13:-12 16:36 17:-10 18:-8 23:-18 25:-18 26:-16 27:-8 28:-11 29:161 33:-8 37:-11 43:-10 76:9 83:122 84:-22 104:19 105:-11 109:-13 110:-15 125:-9
plan for	1:12 2:37 5:56 6:-15 11:14 16:17 23:-11 26:-10 29:68 83:18 84:-16 105:-9 109:-13 110:-14
#n plan	1:8 29:11
#d need	1:20
want==ed	1:34 4:17 11:12 29:-11 36:14 47:8 98:24 106:19 125:-8
want	0:-16 1:67 2:-12 4:25 7:25 9:29 11:14 15:-17 16:13 17:-10 20:-10 23:-14 26:-9 29:-18 30:17 32:-20 33:-26 36:8 38:61 40:-10 43:-8 47:43 51:18 56:16 58:-12 64:-10 65:-18 69:14 71:-8 83:9 91:17 98:30 99:15 100:-13 101:-11 103:25 105:8 106:28 110:-19 114:11 122:19 125:22
#d want	1:13
want for	4:8
elsewher==e	1:36 48:12
elsewher	1:36 48:12
need elsewher	1:21
elsewher $	1:36 48:12
want elsewher	1:14
#n want	1:20 11:13 29:-9 47:19 91:21
@wire need	9:13 125:42
need $	5:-14 6:50 7:13 9:-8 13:22 22:13 27:-10 31:8 32:11 38:18 41:-8 42:20 83:24 103:23 106:11 125:-12
anywher==e	1:45 50:19 77:9 116:-9 125:-13
anywher	1:45 50:19 77:9 116:-9 125:-13
want anywher	1:14
anywher $	1:14 50:19 77:9 116:-9
cost==	1:44 5:-8 8:-9 9:-19 19:58 21:-11 27:-19 125:52
what doe	1:14 13:-10 17:14 20:17 23:35 25:-8 27:-8 29:11 33:-8 35:46
cost	1:43 5:-8 8:-9 9:-19 10:13 19:58 21:-11 27:-20 29:-10 55:10 125:52
cost $	1:14 8:-9 9:-19 19:61 21:-11 27:-19 125:56
it==	1:55 2:-30 4:-11 5:-12 6:-37 7:-20 9:-21 11:-12 12:-22 13:-28 14:-29 15:14 16:-22 17:17 18:34 19:9 20:-12 22:-17 23:-24 24:21 25:-22 26:-24 27:-25 28:-28 29:-15 31:-30 32:-10 33:8 35:-21 36:41 37:45 38:32 40:32 42:58 43:-14 44:21 45:-26 48:20 50:20 51:28 53:-10 54:-15 55:-18 57:32 58:-25 59:8 60:13 61:-30 62:-23 63:-10 64:10 65:17 66:-27 67:-19 68:-13 69:49 71:-16 74:-11 75:-33 77:73 79:-20 81:-23 82:-15 83:44 85:26 86:41 87:13 88:-13 89:85 90:-18 91:33 92:38 93:37 94:72 95:34 100:41 103:-10 106:32 107:-16 108:16 109:-13 110:-29 111:-19 115:26 116:-16 118:-20 119:12 122:-18 124:49 125:-19
it	1:55 2:-30 4:-11 5:-12 6:-37 7:-20 9:-21 11:-12 12:-22 13:-28 14:-29 15:14 16:-22 17:17 18:34 19:9 20:-12 22:-17 23:-24 24:21 25:-22 26:-24 27:-25 28:-28 29:-15 31:-30 32:-10 33:8 35:-21 36:41 37:45 38:32 40:32 42:58 43:-14 44:21 45:-26 48:20 50:20 51:28 53:-10 54:-15 55:-18 57:32 58:-25 59:8 60:13 61:-30 62:-23 63:-10 64:10 65:17 66:-27 67:-19 68:-13 69:49 71:-16 74:-11 75:-33 77:73 79:-20 81:-23 82:-15 83:44 85:26 86:41 87:13 88:-13 89:85 90:-18 91:33 92:38 93:37 94:72 95:34 100:41 103:-10 106:32 107:-16 108:16 109:-13 110:-29 111:-19 115:26 116:-16 118:-20 119:12 122:-18 124:49 125:-19
doe it	1:18 8:14 9:-14 13:22 15:10 16:19 27:10 30:17 32:10
it to	15:11 18:44 40:15 64:21
to take	1:20 17:11 23:24 35:16 110:31 111:-9 121:15 125:-10
will==	0:-28 2:-14 3:56 4:-14 5:16 6:31 7:-8 8:-18 9:62 11:-16 14:-11 16:-34 17:-18 18:37 19:-13 20:-12 21:-13 22:15 23:-11 24:-10 25:-12 26:-10 27:-14 28:39 29:34 32:-17 33:-22 35:-8 36:46 38:16 40:8 41:-8 42:-21 43:-32 44:-8 45:-15 47:-15 50:-27 53:17 54:15 55:-9 58:11 64:38 65:-11 67:-8 68:12 69:-8 74:-12 76:-12 77:-11 83:-12 84:-9 86:10 87:-13 89:-10 91:-10 93:44 94:-21 95:-8 97:-8 99:-20 101:18 102:25 106:-13 107:-14 108:26 109:-12 110:18 111:13 112:13 113:-11 115:29 116:12 118:45 119:72 122:19 124:-9 125:45
will	0:-28 2:-14 3:56 4:-14 5:16 6:31 7:-8 8:-18 9:62 11:-16 14:-11 16:-34 17:-18 18:37 19:-13 20:-12 21:-13 22:15 23:-11 24:-10 25:-12 26:-10 27:-14 28:39 29:34 32:-17 33:-22 35:-8 36:46 38:16 40:8 41:-8 42:-21 43:-32 44:-8 45:-15 47:-15 50:-27 53:17 54:15 55:-9 58:11 64:38 65:-11 67:-8 68:12 69:-8 74:-12 76:-12 77:-11 83:-12 84:-9 86:10 87:-13 89:-10 91:-10 93:44 94:-21 95:-8 97:-8 99:-20 101:18 102:25 106:-13 107:-14 108:26 109:-12 110:18 111:13 112:13 113:-11 115:29 116:12 118:45 119:72 122:19 124:-9 125:45
what will	1:20 29:11
will it	1:15 9:41 18:9 27:-11 29:8 125:-9
it cost	1:18
@wire cost	8:-8 9:-17 19:53
what would	5:22 10:17 11:-8 16:11 30:23
)~",
R"~(take number	1:14
if==	0:57 1:38 2:18 5:46 6:-12 8:-12 9:13 13:-9 16:88 17:-24 18:9 22:-16 27:9 29:-10 30:59 31:-8 33:-19 36:-19 37:-8 41:-8 42:30 43:-10 44:-13 45:-10 51:24 72:-13 74:-8 89:-17 91:-8 101:-8 125:131
took==	3:-11 15:41 16:-8 36:35 37:-19 39:-14 40:-9 41:-8 43:10 48:20 50:18 70:-10 81:-17 82:122 87:42 97:52 101:8 116:-11 125:-13
if	0:57 1:38 2:18 5:46 6:-12 8:-12 9:13 13:-9 16:88 17:-24 18:9 22:-16 27:9 29:-10 30:59 31:-8 33:-19 36:-19 37:-8 41:-8 42:30 43:-10 44:-13 45:-10 51:24 72:-13 74:-8 89:-17 91:-8 101:-8 125:131
if i	0:11 5:24 16:29 17:-10 22:-8 30:25 33:9 105:10 125:-8
took	3:-11 15:41 16:-8 36:35 37:-19 39:-14 40:-9 41:-8 43:10 48:20 50:18 70:-10 81:-17 82:122 87:42 97:52 101:8 116:-11 125:-13
i took	81:-16 82:40 87:28 97:20
took #n	81:-12 82:66 97:10
cost to	1:10
to use	73:11
would it	0:19 1:11 125:-13
i have	1:37 4:-12 5:8 9:8 10:36 12:25 14:8 16:-11 17:-10 18:8 19:12 25:-11 26:56 28:-17 29:18 31:-11 33:-12 35:-12 42:9 66:-12 70:19 72:16 75:-12 85:-8 90:-10 94:11 96:8 97:-8 98:13 99:21 100:19 105:14 107:8 110:9 119:10
have the	6:15 8:-9 10:17 11:12 19:14 26:20 31:12 38:28 86:16 105:-9 125:-13
have #d	1:29 66:16
may i	1:8 11:12 14:14 19:16 26:11 27:-10 30:10 35:26
have #n	1:8 38:-12 50:-10 66:28 99:9 100:14 125:36
we have	0:13 4:20 5:-13 6:17 8:54 9:-12 10:31 11:14 19:10 22:27 23:-15 27:-11 29:17 31:-18 33:-14 38:-10 39:-12 50:-22 51:18 66:56 71:27 85:13 86:-8 98:13 99:38 105:17 122:8 125:-28
who==	0:-10 1:8 2:-9 4:-10 5:-10 6:-13 8:-19 9:-28 10:15 11:-24 13:-31 14:136 15:147 16:-17 17:-18 19:-15 20:-9 21:-9 22:-10 23:76 24:-8 25:66 26:70 27:-10 28:106 29:45 31:13 32:108 33:144 35:-16 36:-12 38:-15 39:-9 40:-13 43:-20 44:-15 47:-12 48:-9 50:-9 53:-9 55:-10 57:-8 62:-15 63:16 64:-16 77:-8 87:-10 89:-8 91:-8 99:-15 101:-15 102:-8 103:-16 105:-12 106:-9 107:-21 108:-11 110:-10 111:-10 113:-15 114:-11 118:-9 125:28
need==s	1:18 4:-10 11:27 33:-16 36:-10 37:8 38:23 41:-8 42:19 47:37 50:-8 65:-10 83:22 84:9 99:34 100:-10 101:-8 103:162 106:-13 113:8 121:26 125:25
who	0:-10 1:8 2:-9 4:-10 5:-10 6:-13 8:-19 9:-28 10:15 11:-24 13:-31 14:136 15:147 16:-17 17:-18 19:-15 20:-9 21:-9 22:-10 23:76 24:-8 25:66 26:70 27:-10 28:106 29:45 31:13 32:108 33:144 35:-16 36:-12 38:-15 39:-9 40:-13 43:-20 44:-15 47:-12 48:-9 50:-9 53:-9 55:-10 57:-8 62:-15 63:16 64:-16 77:-8 87:-10 89:-8 91:-8 99:-15 101:-15 102:-8 103:-16 105:-12 106:-9 107:-21 108:-11 110:-10 111:-10 113:-15 114:-11 118:-9 125:28
^ who	1:17 4:-9 6:-11 8:-17 9:-26 11:-17 13:-26 14:92 15:106 16:-15 17:-14 19:-14 22:-8 23:66 25:43 26:51 27:-8 28:70 29:55 31:17 32:119 33:106 35:-10 36:-10 38:-14 40:-9 43:-19 44:-15 47:-8 48:-8 55:-8 64:-9 65:-11 87:-8 99:-14 101:-13 103:-9 105:-8 107:-18 108:-9 113:-12 114:-11 125:51
who need	1:18
need #d	0:24 1:22 8:-11 38:8
want==s	1:18 27:10 30:20 33:-8 35:9 38:60 47:37 56:16 65:-10 69:17 81:9 83:10 103:30 110:-12
who want	1:19
want #d	1:23 38:17
which job	1:15 9:21 11:27 12:18 23:17 29:45
job want	1:13
job need	1:8 11:25
want number	1:15 38:14
anyon==e	8:13 9:-10 23:13 25:23 29:-9 33:53 36:-11 38:-13 40:-8 64:-8 65:94 125:-12
need==	0:34 1:18 5:-12 6:62 7:57 8:-24 9:33 12:-10 13:12 17:-20 18:-8 20:18 21:-9 23:-13 25:27 26:-17 28:13 29:-28 32:8 33:49 35:12 37:-24 38:20 39:-8 43:-9 47:-8 52:-18 53:-11 57:23 65:-10 100:-16 105:39 106:77 107:-9 108:-16 110:-8 114:25 122:16 125:30
^ doe	1:35 3:28 9:8 12:16 15:15 16:-8 17:26 18:41 20:10 22:23 28:27 32:58 38:-8 89:-44 91:-8 111:-8 121:-10 125:31
anyon	8:13 9:-10 23:13 25:23 29:-9 33:53 36:-11 38:-13 40:-8 64:-8 65:94 125:-12
doe anyon	1:21
anyon need	1:15
need the	0:-9 4:23 6:-13 16:15 17:-10 33:56 47:16 84:-8 100:12 103:55 106:23 125:-11
anybody==	1:39 13:-15 14:-15 15:87 17:-20 20:-11 21:-11 23:38 26:12 28:58 31:8 33:24 37:-9 40:-9 60:9 65:13 103:8 125:-18
want==	0:-9 1:15 4:10 5:8 7:26 9:33 15:-14 16:17 20:-8 27:-12 29:-8 32:-18 33:-17 48:9 51:21 64:-9 91:20 98:8 99:20 100:-8 105:11 106:13 114:13 122:20 124:8 125:25
anybody	1:39 13:-15 14:-15 15:87 17:-20 20:-11 21:-11 23:38 26:12 28:58 31:8 33:24 37:-9 40:-9 60:9 65:13 103:8 125:-18
doe anybody	1:18 15:21 125:-11
anybody want	1:8
anybody need	1:11
doe any	1:11 22:30
any job	12:17 22:11
need #n	99:13 121:23
need number	38:19
^ we	1:-9 2:-19 4:-11 5:-14 6:-18 8:-18 9:-14 10:-23 11:-29 12:-11 13:-19 16:-12 17:-10 19:-8 22:-13 23:-17 25:-22 27:-8 28:-28 29:-23 30:-16 31:-31 32:-22 33:-9 35:-8 38:10 40:29 42:-8 45:-12 48:-9 49:11 52:20 53:54 54:29 55:-12 57:16 61:-8 63:19 65:-9 66:52 67:-15 70:-16 71:38 72:-11 77:29 81:-13 82:22 83:-9 85:15 86:35 89:-11 91:-10 95:12 97:-11 99:23 100:42 102:26 104:21 105:38 107:51 108:62 109:-14 110:-8 111:-12 112:8 114:-9 118:-11 119:-36 120:69 121:-22 122:79 125:71
it go	1:21 33:14 38:25 39:-8 84:11 125:12
@wire wher	51:-16 125:36
got==	2:-12 3:-10 4:-26 5:-8 6:-9 8:51 9:-11 11:37 12:75 13:-23 14:24 17:-8 19:-14 20:-9 21:-13 22:-12 26:42 27:-28 28:-17 29:-16 30:-10 31:8 32:-8 36:10 38:-11 41:21 43:8 44:64 45:-12 50:83 55:-11 59:8 61:15 65:8 66:-19 68:-14 70:38 75:-12 77:21 79:-9 81:-9 91:-8 92:-11 93:-9 94:52 98:30 99:28 101:-10 102:20 104:-10 116:-10 117:62 119:-9 120:-8
here==	0:-13 1:9 5:-10 8:13 9:-14 11:-9 14:69 15:-12 21:-9 22:-8 23:-13 25:-19 26:-13 28:28 29:-34 31:-11 32:-9 33:19 35:54 39:15 50:28 51:-9 52:9 53:31 58:57 61:-13 62:35 63:45 64:21 65:-14 66:-14 67:8 69:-8 75:-9 99:-10 100:25 101:-14 103:-8 105:-9 106:-8 108:8 109:-13 110:27 111:15 112:-13 117:87 119:-8 120:10 125:-31
^ i	0:-21 2:-29 3:-14 4:20 5:-25 6:-8 7:10 8:-10 10:-16 11:-24 13:-31 14:-13 16:-37 17:-65 18:-31 20:11 21:-9 22:-23 23:-9 26:-44 27:-22 28:-12 29:-24 30:-37 31:-11 32:-31 33:11 35:-11 36:23 38:-18 40:33 42:16 43:19 47:21 48:-10 50:-13 51:10 52:9 53:-18 54:-12 57:-8 58:-8 62:-10 64:29 65:44 72:-13 73:-9 74:-8 75:14 77:12 78:22 79:9 80:-10 81:17 82:-13 85:-11 86:11 87:11 89:10 90:16 91:-25 93:-14 95:-10 98:14 99:13 100:19 103:-10 104:-9 105:26 106:47 107:59 108:57 110:120 111:111 112:-11 113:-14 115:22 116:18 117:-8 118:-10 119:21 122:13 124:-9 125:42
got	2:-12 3:-10 4:-26 5:-8 6:-9 8:51 9:-11 11:37 12:75 13:-23 14:24 17:-8 19:-14 20:-9 21:-13 22:-12 26:42 27:-28 28:-17 29:-16 30:-10 31:8 32:-8 36:10 38:-11 41:21 43:8 44:64 45:-12 50:83 55:-11 59:8 61:15 65:8 66:-19 68:-14 70:38 75:-12 77:21 79:-9 81:-9 91:-8 92:-11 93:-9 94:52 98:30 99:28 101:-10 102:20 104:-10 116:-10 117:62 119:-9 120:-8
i got	70:35 72:10
got #n	50:34 66:-8 70:13 98:35 99:25 125:-9
here	0:-13 1:9 5:-10 8:13 9:-14 11:-9 14:69 15:-12 21:-9 22:-8 23:-13 25:-19 26:-13 28:28 29:-34 31:-11 32:-9 33:19 35:54 39:15 50:28 51:-9 52:9 53:31 58:57 61:-13 62:35 63:45 64:21 65:-14 66:-14 67:8 69:-8 75:-9 99:-10 100:25 101:-14 103:-8 105:-9 106:-8 108:8 109:-13 110:27 111:15 112:-13 117:87 119:-8 120:10 125:-31
have got	72:-10 99:47 125:24
got a	1:10 50:17 59:14 67:-13 95:14 96:-9 121:8
@wire here	1:10 39:9 125:23
we got	4:-15 8:40 11:52 12:28 13:-9 14:28 19:-10 21:-8 25:13 27:-23 31:18 50:42 66:-8 67:-13 117:20
have a	14:15 26:-13 29:37 74:23 80:-8 85:14 90:13 98:28 110:11
^ got	1:11 50:51 66:-8 70:18 102:25 116:-8 117:46
got #d	41:15 50:24
shift==	2:214 13:-10 41:-12 44:-8 54:10 82:-9
slot==s	0:-59 1:-32 2:95 3:-76 4:147 5:-15 6:-14 11:-14 13:78 15:-13 17:-22 18:107 23:-9 24:-10 27:14 29:-14 30:-8 33:-26 36:-57 37:-40 41:-63 42:-29 43:78 44:30 45:-36 47:-17 48:-13 64:-21 65:-11 70:123 71:114 73:-14 74:121 75:41 76:-28 77:-17 78:-47 79:-8 81:-24 82:79 83:-10 87:-10 89:-25 91:32 92:-47 93:-45 95:45 96:10 103:19 104:14 107:36 108:34 113:-14 114:-13 115:15 125:-17
shift	0:-8 2:198 3:-10 13:-11 17:-9 41:-29 42:-11 44:-9 45:-13 54:9 61:13 64:-10 71:-13 75:177 82:-10 89:-16 125:-9
^ shift	2:148 13:-9 41:-11 45:-11 71:-12 75:110 89:-10
shift job	2:64 45:-8 75:19
tin ~	2:14
open==	1:12 2:25 4:-16 5:-15 6:28 8:-32 9:23 10:-15 11:-29 12:113 13:72 14:39 16:-10 17:-11 19:-9 21:-8 22:-8 23:-14 25:-21 26:-10 27:-13 28:96 29:-35 30:-15 31:32 32:-12 33:-10 35:-12 43:-9 45:-9 47:-13 52:79 53:68 54:126 63:-8 71:-8 75:-13 84:-8 89:-8 92:-8 97:-10 101:-11 103:-8 105:-17 108:-8 109:28 110:-16 111:-26 112:94 115:-9 117:-9 118:-13 119:13 125:9
)~",
R"~(length==s	0:-12 2:29 4:122 8:22 22:-24 39:-13 45:-9 46:-81 55:34 71:-22 72:11 75:13 79:27 80:133 82:-50 89:-10 92:-15 95:-9 97:-9 120:9
open	1:12 2:13 4:-16 6:27 8:-33 9:22 10:-15 11:-32 12:111 13:71 14:38 16:-11 17:-13 19:-10 21:-8 22:-9 23:-15 24:-8 25:-22 26:-13 27:-14 28:146 29:-40 30:-16 31:31 32:-13 33:-11 35:-12 43:-9 45:-10 47:-14 52:87 53:62 54:186 55:-8 58:-8 63:-9 71:-9 75:-16 84:-8 89:-11 92:-8 97:-11 101:-12 103:-8 105:-27 106:-8 108:-8 109:25 110:-17 111:-32 112:90 115:-13 117:-9 118:-17 119:12
open ~	2:21
mm slot	0:-8 3:9 41:28 42:-12 78:12
#n tin	2:9
@job open	2:12
&#d#n#o@job	3:-8 37:9 78:16
shift @job	2:26
fret==s	1:-21 2:153 3:-20 4:-8 5:40 9:-34 11:-21 12:-15 13:12 14:-10 15:-24 16:21 17:14 18:-16 19:-9 21:-8 22:-17 23:-18 24:61 25:-15 26:-10 27:67 28:-9 29:-35 30:63 32:-18 33:38 35:-19 36:-31 37:-16 38:-8 39:-12 40:-9 41:-35 42:-23 43:72 44:67 45:29 46:61 47:-14 48:-13 50:-10 64:-15 65:-12 67:-18 69:-10 70:86 71:17 72:78 74:-9 76:-14 77:-33 78:-32 79:28 80:-17 81:-15 84:-12 85:-13 87:-13 88:-9 89:-33 92:-9 93:10 95:33 96:36 98:-12 99:-13 101:-9 103:35 104:46 105:-22 107:53 108:23 111:-8 113:-15 114:-22 115:19 120:-8 125:27
anew==	2:59 5:-9 36:-9 63:10 71:-43 78:110 95:53 102:16
and==	1:-32 3:-46 5:-34 6:-38 7:-21 8:12 10:48 11:21 13:20 14:46 15:-22 16:-10 17:14 19:12 20:46 21:51 22:-33 23:63 24:-24 25:14 26:-19 27:47 28:-23 29:15 32:9 33:-18 35:16 37:-29 38:-45 39:-18 41:-39 43:11 45:17 46:11 48:-9 49:16 50:-21 51:-13 52:21 54:-19 59:17 60:-18 61:11 62:33 63:-8 64:-24 65:-24 66:30 67:13 69:-16 70:61 71:9 72:8 73:-25 75:51 77:-21 78:-34 79:-17 80:16 81:31 82:54 83:36 84:-16 85:17 86:-31 87:-11 88:20 89:-13 90:38 91:23 92:17 95:78 96:49 97:29 98:-26 99:-17 100:-25 101:-21 103:-21 104:-14 106:-18 107:-16 108:-17 109:31 110:-16 111:-28 112:-27 113:-23 116:55 117:13 118:-18 119:-22 120:20 121:-10 124:12 125:-73
shift the	2:20
anew	2:59 5:-9 36:-9 63:10 71:-43 78:110 95:53 102:16
#n anew	2:16 5:-8 71:-43 78:61 95:8
and the	0:101 1:10 2:23 4:-8 11:10 16:-21 17:12 29:17 33:-12 36:-8 47:-11 62:10 74:-11 75:17 77:-10 83:18 85:8 87:17 89:-11 90:27 92:8 97:-10 98:14 99:-8 105:38 117:18 118:-12
the open	2:18 8:-8 9:41 12:27 28:18 31:9 52:13 54:-16 119:23
open slot	2:19
slot $	1:9 2:12 3:-9 4:126 13:-26 18:17 36:19 39:-11 43:-11 74:-21 91:62
rearrang==e	2:96 13:-11 16:-10
with==	0:-20 2:23 5:-10 7:10 8:-39 9:-19 10:17 11:23 12:-25 13:16 14:22 15:26 16:32 17:19 18:38 19:11 21:26 22:-22 23:-35 24:10 25:-22 26:-14 27:29 30:28 32:-24 33:23 37:-15 38:-25 43:28 44:29 45:-8 48:-20 51:-10 52:12 53:-15 54:-10 55:-21 56:26 57:-22 58:11 59:24 61:-16 62:-15 63:32 64:20 65:-17 66:-12 67:16 69:-9 71:-13 72:10 73:37 75:-29 76:-17 78:-17 79:-15 80:-9 81:11 82:19 84:-13 87:-21 88:-15 90:-29 91:-17 92:-9 94:15 95:-26 96:25 97:35 99:-9 100:13 102:-14 103:19 106:17 107:54 108:31 111:-21 112:-11 113:52 114:14 115:-13 116:38 117:-24 118:-11 120:14 122:51 124:-8 125:-53
rearrang	2:96 13:-11 16:-10
^ rearrang	2:50
rearrang the	2:20
@job anew	2:43 78:17
with	0:-20 2:23 5:-10 7:10 8:-39 9:-19 10:17 11:23 12:-25 13:16 14:22 15:26 16:32 17:19 18:38 19:11 21:26 22:-22 23:-35 24:10 25:-22 26:-14 27:29 30:28 32:-24 33:23 37:-15 38:-25 43:28 44:29 45:-8 48:-20 51:-10 52:12 53:-15 54:-10 55:-21 56:26 57:-22 58:11 59:24 61:-16 62:-15 63:32 64:20 65:-17 66:-12 67:16 69:-9 71:-13 72:10 73:37 75:-29 76:-17 78:-17 79:-15 80:-9 81:11 82:19 84:-13 87:-21 88:-15 90:-29 91:-17 92:-9 94:15 95:-26 96:25 97:35 99:-9 100:13 102:-14 103:19 106:17 107:54 108:31 111:-21 112:-11 113:52 114:14 115:-13 116:38 117:-24 118:-11 120:14 122:51 124:-8 125:-53
with the	0:-13 2:14 3:-9 4:19 5:-8 7:13 8:-25 9:13 11:-11 12:-8 13:8 15:17 16:29 17:-31 19:-11 21:30 24:8 29:-11 30:12 33:33 36:23 38:-12 40:-13 43:-20 44:43 47:12 48:-11 49:10 59:10 63:-8 67:20 72:15 75:-11 77:26 78:-19 79:-8 85:-8 87:-10 89:10 93:-8 94:14 97:42 100:29 106:28 108:-18 117:-13 119:10 125:-24
tin $	0:-50 1:32 2:14 3:-10 4:-8 5:-9 7:10 8:159 18:-8 20:-8 21:-31 22:12 27:-9 33:23 36:-19 38:-11 39:95 40:-9 41:-14 42:10 50:-9 70:-8 71:-9 72:66 75:53 78:26 79:70 81:-23 82:34 89:-14 91:-8 125:-23
the job	0:-11 1:-8 3:-11 4:29 11:-20 12:34 14:-11 16:-11 17:-14 23:-12 24:24 29:23 30:-11 36:-12 37:13 41:-23 43:27 44:-12 45:-11 48:-8 54:-8 65:17 72:13 76:13 78:27 83:-20 84:26 87:-11 90:-18 91:8 95:31 106:8 107:-10 113:47 114:39 115:23 125:-29
anew $	2:43 95:32
@job and	1:-9 3:8 23:-9 29:34 41:15 43:-12 45:10 83:10 84:9 89:8 95:30 96:11 114:16
@job with	2:12 4:30 15:9 36:17 44:9
at==	0:-22 1:-24 2:-13 3:35 6:-12 7:-10 8:11 9:-23 10:24 11:11 12:37 13:10 14:48 16:-24 17:-27 18:-19 20:-9 22:-17 23:-32 24:8 25:58 26:8 27:-32 28:-9 29:33 30:-20 31:-23 32:42 33:-14 35:-16 37:-29 39:-28 40:-20 41:-25 42:43 43:15 44:-10 45:9 46:34 49:-10 50:-9 51:37 52:14 53:18 55:-15 56:77 57:-15 58:45 60:-8 61:29 62:-12 63:-14 64:-14 65:-21 67:14 69:-16 70:-24 71:-42 72:-9 73:-12 74:-9 75:-15 76:115 77:11 78:54 81:9 82:-33 84:18 85:-19 86:-8 88:-13 89:29 90:-23 91:57 93:17 94:-14 95:-10 96:12 98:-18 99:-22 100:-23 101:-32 102:-9 103:34 105:22 106:-16 107:36 108:18 109:-24 111:42 112:-12 113:-9 114:-29 115:65 118:-12 119:27 121:29 122:-14 124:-11
with slot	2:12 16:-9 17:15 18:40
at	0:-28 1:-33 2:-21 3:29 4:-12 6:-19 7:-11 8:9 9:-24 10:23 12:35 14:46 15:-10 16:-32 17:-34 18:-20 20:-11 22:-18 23:-36 25:55 27:-34 28:-12 29:33 30:-22 31:-25 32:40 33:-22 35:-17 37:-35 38:-8 39:-29 40:-21 41:-29 42:40 43:47 44:37 45:51 46:29 47:-9 48:-8 49:-11 51:32 52:-27 53:49 55:-19 56:75 57:-16 58:44 59:-9 60:-12 61:27 62:-13 63:-17 64:-20 65:-25 67:12 69:-19 70:-40 71:-14 72:-15 73:-20 75:-22 76:103 78:48 81:15 82:-48 83:8 84:28 85:-20 86:-10 88:-14 89:11 90:-27 91:44 94:-16 95:35 96:49 97:33 98:-22 99:-30 100:-28 102:32 103:32 105:33 106:-19 107:59 108:61 109:-28 110:-14 111:75 112:-17 113:-19 114:-37 115:68 117:43 118:-18 119:23 121:25 122:-15 124:-12 125:-16
#n at	0:-23 1:-9 3:-10 4:22 16:-18 29:11 36:11 37:-12 41:-18 43:16 45:14 46:32 71:-13 75:17 76:15 77:27 81:8 82:-11 84:14 85:-17 89:29 91:-9 96:15 107:25 115:-11 125:14
at #n	1:-10 2:-11 3:-13 4:-19 11:-10 15:-9 16:-23 17:-16 26:23 29:18 33:-10 36:-22 37:-10 41:-14 42:23 43:81 44:15 45:20 46:-8 47:-14 48:-10 50:-8 51:15 52:-21 53:23 68:12 70:-8 71:15 73:-11 74:-13 75:-16 76:30 77:-18 78:18 82:-17 84:36 89:28 91:37 95:22 96:33 98:-8 99:-16 101:15 102:23 104:13 107:-11 108:34 111:44 112:-14 113:-15 114:-13 115:35 117:37 125:-43
mm and	3:10 39:8
measur==ing	3:18 41:-9 79:13
using==	2:25 21:15 25:26 33:-9 35:18 36:24 44:8 82:-16 86:23
measur	0:-25 1:-11 2:21 4:32 17:-9 33:-11 36:-12 41:178 42:-41 45:-12 46:-12 49:-8 50:-19 72:9 76:27 77:-9 79:47 80:88 81:-8 82:-13 87:8 89:-17 91:-11 92:41 93:-24 95:-14 97:-10 117:20 125:53
#n measur	2:27 41:12 42:-18 80:-10 92:18
measur #n	3:-12 41:29 75:26 89:-11 92:28
using	2:25 21:15 25:26 33:-9 35:18 36:24 44:8 82:-16 86:23
using the	35:18 44:8 82:-16 86:9 125:16
being==	2:10 23:24 43:-32 81:15 82:-16 107:78 108:16 113:-9 114:20
being	2:10 23:24 43:-32 81:15 82:-16 107:78 108:16 113:-9 114:20
#n being	2:12 23:16
mm with	74:13
#r at	105:19
at #d	0:-11 2:16 3:56 36:-14 42:45 50:-12 51:30 74:12 75:31 76:-30 78:59 92:-23 125:-9
&#d#n#r	2:9 42:8 44:16 78:16 80:-10
in and	8:-11 18:8 20:56 21:-19
&#d#r@job	3:11 41:9 70:13 82:20
measur #d	2:22 3:12 41:37 42:-14 72:8 80:16 88:-10 92:-8 117:23
being #d	2:9
&#d#n@job	0:-39 1:-21 3:74 4:-8 17:-8 18:12 39:-11 41:61 42:48 70:23 71:-11 76:66 77:-13 92:26 93:-11 125:-11
#n with	0:-11 3:13 15:30 16:39 17:-15 18:22 41:12 44:-16 45:19 73:11 82:24 91:-8 92:-9 94:8 101:13
how==	0:-19 1:-18 2:76 3:-11 4:78 5:95 6:21 8:100 9:59 10:-16 11:24 12:-8 13:98 14:17 15:-23 16:119 17:11 19:26 20:24 21:50 22:-23 24:79 25:66 26:-15 27:102 29:63 30:-15 31:-14 32:71 33:-15 35:106 36:-8 37:-8 39:-9 40:-8 41:-20 42:-11 43:-21 44:-25 45:-13 46:-8 47:-10 48:-13 49:-11 50:-11 51:-12 53:-8 55:-13 57:-11 58:-11 64:-15 65:-18 66:-22 67:-11 69:-9 71:-12 72:-9 73:-8 75:-17 76:-11 77:-17 78:-9 79:-9 83:-11 84:-8 86:-9 87:-13 88:-8 89:-21 90:-8 91:-14 92:9 93:-17 94:-22 95:-9 97:-12 98:-9 99:-13 100:-13 101:-11 102:-10 103:-22 104:-22 105:-9 106:-10 107:-25 108:-17 110:-9 112:-8 113:-17 114:-14 117:-8 118:-11 119:-10 120:-9 121:-9 122:-9 124:-17 125:-16
)~",
R"~(how	0:-19 1:-18 2:76 3:-11 4:78 5:95 6:21 8:100 9:59 10:-16 11:24 12:-8 13:98 14:17 15:-23 16:119 17:11 19:26 20:24 21:50 22:-23 24:79 25:66 26:-15 27:102 29:63 30:-15 31:-14 32:71 33:-15 35:106 36:-8 37:-8 39:-9 40:-8 41:-20 42:-11 43:-21 44:-25 45:-13 46:-8 47:-10 48:-13 49:-11 50:-11 51:-12 53:-8 55:-13 57:-11 58:-11 64:-15 65:-18 66:-22 67:-11 69:-9 71:-12 72:-9 73:-8 75:-17 76:-11 77:-17 78:-9 79:-9 83:-11 84:-8 86:-9 87:-13 88:-8 89:-21 90:-8 91:-14 92:9 93:-17 94:-22 95:-9 97:-12 98:-9 99:-13 100:-13 101:-11 102:-10 103:-22 104:-22 105:-9 106:-10 107:-25 108:-17 110:-9 112:-8 113:-17 114:-14 117:-8 118:-11 119:-10 120:-9 121:-9 122:-9 124:-17 125:-16
^ how	0:-13 1:-9 2:26 4:32 5:70 6:28 8:38 9:51 10:-12 11:38 13:24 14:15 15:-17 16:59 17:28 19:10 20:13 21:52 22:-17 23:19 24:87 25:44 26:-12 27:90 29:55 30:-8 32:33 33:-9 35:33 43:-13 44:-8 48:-8 51:-10 55:-10 57:-8 64:-10 65:-12 66:-17 67:-8 71:-9 83:-8 87:-9 89:-12 91:-10 93:-12 94:-19 99:-10 100:-10 102:-8 103:-20 104:-17 107:-21 108:-13 113:-13 114:-11 118:-9 124:-10 125:-17
how can	2:36 13:-8 16:25 35:-10
we rearrang	2:22
rearrang job	2:44 13:-8 16:-8
lay==	2:78 14:16 17:32 19:10 125:-12
lay	2:78 14:16 17:32 19:10 125:-12
i lay	14:16 17:31
lay the	2:8 17:34
how do	2:40 5:33 6:-23 8:-9 9:-9 16:34 17:-9 24:-14 27:-9 35:79
how should	2:16 5:68 6:-16 9:-8 41:-10
i shift	2:31 41:-12
what fret	2:45 5:-10 16:31 17:-13 24:13 27:-13 33:-11
@job can	2:15 3:9 43:21 113:48 114:-10
shift $	2:28 75:39
move==	2:107 5:-12 11:-15 16:-12 17:-18 33:-10 45:-8 47:26 62:16 89:8 115:10 125:10
which fret	0:-11 2:14 5:14 13:32 17:46 24:45 27:-8 33:49 45:-8 97:-10 107:-8
move	2:107 5:-12 11:-15 16:-12 17:-18 33:-10 45:-8 47:26 62:16 89:8 115:10 125:10
we move	2:12
move $	2:17
can move	2:16
shift of	2:8
i move	2:63 5:-10 16:-11 17:-13
move on	2:21 17:-9 47:18
move of	2:12
all==	0:-8 1:-25 2:-10 3:60 4:31 5:25 6:-43 7:-11 8:24 9:13 10:-10 12:9 13:18 14:30 15:-20 16:63 17:24 18:-17 19:63 20:39 22:-23 23:49 24:-43 26:8 27:-15 30:-16 33:28 34:-14 35:8 36:-19 37:-31 38:-29 39:-25 40:-19 41:-21 42:-14 43:86 44:59 45:106 47:-12 50:18 51:-15 54:-22 55:-20 57:-17 58:-17 59:-10 61:-12 62:-12 63:-17 64:-16 65:-12 66:48 67:15 68:-19 69:26 70:-8 71:22 73:8 74:-16 76:-13 77:-18 78:-24 79:-17 81:59 83:128 84:129 86:-10 88:-14 89:-13 91:-30 92:-15 93:-8 94:-13 95:-15 96:-12 97:-25 98:-13 99:-8 100:-11 101:46 102:-18 104:-13 105:26 106:-25 107:-37 108:-37 109:-19 110:-20 111:35 112:50 113:-9 114:-29 115:-28 116:-11 117:14 118:-13 119:-18 120:-11 121:-11 122:-14 123:20 124:-19 125:-17
right==	0:14 1:-10 3:96 4:-15 16:17 18:52 23:-13 25:18 33:8 37:-8 38:-8 40:-9 41:-14 42:-14 48:11 69:9 74:-9 75:-8 77:37 89:-11 90:17 91:-8 92:-8 94:-8 105:20 125:43
side==	3:70 4:-11 13:-21 16:86 17:65 23:19 35:-8 36:-8 37:27 41:-20 42:-15 43:-8 45:36 48:-10 71:-10 83:17 89:79 97:-12 114:-13 125:-8
all	0:-8 1:-25 2:-10 3:60 4:31 5:25 6:-43 7:-11 8:24 9:13 10:-10 12:9 13:18 14:30 15:-20 16:63 17:24 18:-17 19:63 20:39 22:-23 23:49 24:-43 26:8 27:-15 30:-16 33:28 34:-14 35:8 36:-19 37:-31 38:-29 39:-25 40:-19 41:-21 42:-14 43:86 44:59 45:106 47:-12 50:18 51:-15 54:-22 55:-20 57:-17 58:-17 59:-10 61:-12 62:-12 63:-17 64:-16 65:-12 66:48 67:15 68:-19 69:26 70:-8 71:22 73:8 74:-16 76:-13 77:-18 78:-24 79:-17 81:59 83:128 84:129 86:-10 88:-14 89:-13 91:-30 92:-15 93:-8 94:-13 95:-15 96:-12 97:-25 98:-13 99:-8 100:-11 101:46 102:-18 104:-13 105:26 106:-25 107:-37 108:-37 109:-19 110:-20 111:35 112:50 113:-9 114:-29 115:-28 116:-11 117:14 118:-13 119:-18 120:-11 121:-11 122:-14 123:20 124:-19 125:-17
^ all	3:80 5:-14 12:25 13:-8 14:-11 19:35 20:-10 23:55 29:-8 32:20 41:-14 42:-11 43:55 44:64 45:26 54:-9 66:-8 67:18 71:9 81:12 82:11 83:-11 84:59 89:-13 97:-10 107:-11 125:-27
right	0:14 1:-10 3:96 4:-15 16:17 18:52 23:-13 25:18 33:8 37:-8 38:-8 40:-9 41:-14 42:-14 48:11 69:9 74:-9 75:-8 77:37 89:-11 90:17 91:-8 92:-8 94:-8 105:20 125:43
all right	3:103 16:24 25:9 41:-13 42:-12
right job	3:34 41:-12
#r length	42:9
#n one	3:22 41:-10
side	3:70 4:-11 13:-21 16:86 17:65 23:19 35:-8 36:-8 37:27 41:-20 42:-15 43:-8 45:36 48:-10 71:-10 83:17 89:79 97:-12 114:-13 125:-8
one side	3:46 41:-14 42:-8 71:-9
side ~	3:46 41:-14 42:-8 71:-9
@job end	3:16 41:-8 42:-9 78:16 93:25
raw	0:-9 1:19 3:39 39:23 41:-23 71:-9 74:-10 78:24
end raw	1:15 3:42 41:-21 71:-9 74:-10 78:24
raw job	3:17 41:-14 78:17
mm end	3:10 41:-8
#n end	1:23 3:55 41:-21 42:13 75:-20 77:-12 78:15
raw length	3:9 78:9
dress	1:75 3:56 4:-8 16:-10 17:-8 25:-15 27:11 29:-8 33:-8 36:-8 39:38 41:-17 42:50 43:81 45:-13 50:-16 55:49 72:-13 75:-15 76:-11 77:-12 79:-11 91:-9 103:45 104:16 107:44 108:23 125:-16
end dress	3:25 41:-10 42:37 43:24 75:-15 77:-8 80:8
dress job	3:21 42:11 75:-9
&#n#r@job	2:-8 3:12 4:-10 13:-9 17:-11 36:8 70:38 89:35 90:10 95:31 97:8
dress $	1:32 13:9 39:36 42:30 43:-10 107:53
#d one	3:12 40:-14 81:18
&#d#n#r@job	3:10 92:23
~ $	3:8 4:-8 7:-8 8:-14 9:-17 10:-10 11:-17 13:-9 14:-18 17:-9 19:-11 20:-10 21:-10 22:-13 23:-11 25:-30 26:-16 27:-14 28:-18 29:-31 30:-8 31:-11 32:60 33:-10 35:20 40:27 48:12 49:87 53:35 55:116 56:56 57:65 58:38 61:54 62:-14 63:-14 69:33 71:-8 77:32 81:19 82:-8 85:-10 86:48 91:-10 98:84 99:54 100:-32 101:39 102:-14 103:-12 106:-13 108:-26 109:-11 110:26 111:-11 112:-19 118:-12 119:32 120:56 121:-42 122:75 124:-12 125:-38
alright==	3:28
is a	0:-12 25:32 27:22 28:-8 29:-14 30:-23 39:21 41:-9 42:20 53:63 57:16 58:10 61:11 72:-10 78:17 79:9 89:27 99:-9 104:28 108:-10 110:-22 112:8 113:16 120:11 121:24
alright	3:28
alright for	3:21
right for	3:15 18:48 23:-10 36:12
enough==	0:-11 3:46 6:47 8:-40 9:87 13:-12 17:44 18:-8 23:-11 25:-12 29:8 41:-13 68:16 86:-10 91:28 93:-8 99:33 108:16 125:25
enough	0:-11 3:46 6:47 8:-40 9:87 13:-12 17:44 18:-8 23:-11 25:-12 29:8 41:-13 68:16 86:-10 91:28 93:-8 99:33 108:16 125:25
long enough	3:35 41:-12
enough for	3:15 6:9
#o of	0:-11 2:-8 4:11 5:-13 11:11 12:-11 17:-12 20:29 21:24 26:24 27:-8 28:14 29:16 30:36 33:22 41:18 43:-15 44:-17 45:-15 47:35 53:12 54:21 70:26 71:20 76:-10 77:-8 78:9 87:-11 89:-12 90:21 91:19 95:13 97:15 105:8 107:-9 108:-8 110:9 111:22 115:9 118:29
&#d#n#o	3:29 92:11
ok==	3:33 25:8 30:29 125:99
is the	0:-11 1:-14 2:8 3:10 4:51 5:-10 6:-8 7:-8 8:-23 9:83 12:-15 13:126 15:13 17:-12 18:74 19:51 21:43 22:-24 23:10 24:-9 25:82 26:-35 27:12 28:44 29:42 30:63 31:11 32:45 33:-16 35:39 36:-12 37:-10 38:-11 40:-9 41:-15 42:-9 43:11 45:-25 47:-9 48:-15 51:-15 53:-26 59:10 60:-9 64:-11 65:-8 69:-9 74:-9 76:11 77:9 83:-8 86:-12 87:-18 91:-15 93:39 94:-49 101:-13 102:-15 103:-15 106:-12 107:-13 108:-10 112:-10 114:-11 115:-9 119:-8 121:-10 125:-32
ok	3:33 25:8 30:29 125:99
ok for	3:20
in all	21:12 66:31 72:9
my==	8:-11 9:-11 11:-15 12:36 13:56 14:-11 16:9 17:-8 20:-10 22:-8 25:-22 26:25 27:-9 28:33 29:23 31:-8 32:-8 33:24 35:-16 38:27 45:19 50:-15 54:-9 55:-8 58:11 64:22 66:15 70:10 75:-10 81:8 83:13 88:9 89:-9 94:-22 101:-8 106:41 107:-10 110:17 111:24 115:-8 124:65 125:14
^ will	0:-10 3:44 4:-9 9:25 18:26 20:-8 28:46 29:21 110:-13 125:-28
my	8:-11 9:-11 11:-15 12:36 13:56 14:-11 16:9 17:-8 20:-10 22:-8 25:-22 26:25 27:-9 28:33 29:23 31:-8 32:-8 33:24 35:-16 38:27 45:19 50:-15 54:-9 55:-8 58:11 64:22 66:15 70:10 75:-10 81:8 83:13 88:9 89:-9 94:-22 101:-8 106:41 107:-10 110:17 111:24 115:-8 124:65 125:14
mm do	3:17
will a	3:13
do in	3:34 41:-9
will the	5:52 6:-16 9:45 18:11 20:-8 29:34 31:10 43:-8
can #n	0:22 30:9
mine==	3:63 11:-11 12:82 13:-30 14:-8 15:52 17:-13 23:-8 26:46 43:-8 61:-16 64:114 65:-9 69:17 101:-8 105:29 113:-14 125:-16
mine	3:63 11:-11 12:82 13:-30 14:-8 15:52 17:-13 23:-8 26:46 43:-8 61:-16 64:114 65:-9 69:17 101:-8 105:29 113:-14 125:-16
^ mine	3:68 12:26 26:9
mine is	3:68
is #n	0:-11 1:-12 3:-13 13:-8 17:39 41:113 43:-11 45:-13 46:10 51:-11 52:24 53:11 55:10 66:-11 67:21 68:40 70:-10 75:-17 76:21 77:-26 78:-8 85:30 87:-8 88:29 89:-48 91:-13 92:29 97:-10 98:38 99:32 113:12 121:14 125:-33
mm is	68:14
is it	0:-27 1:37 3:23 8:42 11:21 15:-14 16:24 17:28 18:19 29:15 35:21 51:-8 65:-9 77:-16 88:-11 89:-8 91:-18 93:35 108:19 125:-21
)~",
R"~(measure==s	16:9 36:-8 41:49 49:-8 76:35 77:-15 80:19 88:32 92:-13 97:-8 117:9 125:56
^ it	1:-9 3:12 17:-13 25:-10 29:-8 36:-11 44:21 50:14 70:9 73:13 75:-9 77:-15 89:75 91:84 92:32 93:20 94:50 114:26 115:11 124:-9 125:11
measure	16:9 36:-8 41:49 49:-8 76:35 77:-15 80:19 88:32 92:-13 97:-8 117:9 125:56
it measure	3:14
measure #d	41:40 76:36 88:25 92:-8 117:10 125:-8
it all	20:9 83:26
it is	1:12 3:-25 4:-8 8:-18 9:-15 11:-8 13:-13 15:-10 17:-26 18:-21 20:-9 23:-21 25:-19 28:-9 30:-10 31:-11 32:-8 33:8 36:28 37:34 38:12 39:13 40:-17 41:44 43:-13 44:18 47:-9 48:-11 50:-8 51:23 52:25 55:-12 57:23 67:10 77:33 83:-9 85:22 87:14 89:-17 91:57 92:30 93:16 94:29 95:10 96:8 97:-9 98:9 100:-10 101:21 102:12 106:-10 107:-9 108:-8 114:35 115:10 124:-20 125:28
is that	3:40 8:-15 9:-9 10:11 13:20 24:66 29:-11 31:17 41:-8 53:13 112:-11
#d is	38:8 40:34
measure #n	41:29 80:20 88:8
mm that	3:11
^ #d	0:35 3:21 8:-14 39:12 40:40 53:34 66:18 68:10 69:-9 76:-8 81:-8 88:-8
in for	12:43 25:-8 29:-9 110:14
@job all	13:17 45:12
right $	3:26 16:23 25:9 36:-8 69:22 90:9 125:28
mm for	0:-9 3:56 41:22 42:-25 76:10 92:-9
^ #n	0:-52 1:9 2:8 3:33 4:45 5:29 11:-10 13:52 15:-8 17:-19 18:-12 22:-20 23:-11 24:-13 27:-16 29:-13 30:19 31:-8 32:-8 33:21 37:-16 40:16 41:12 42:40 43:-24 44:-22 45:28 47:-11 48:-10 49:-8 50:106 51:-14 52:-10 54:-19 55:-8 64:-9 65:-10 66:-17 67:-15 68:39 69:8 70:-36 71:-24 72:9 76:-8 77:13 78:-15 79:11 80:-18 81:16 82:45 85:-9 87:-15 89:163 90:34 91:-21 92:-8 93:44 95:49 96:8 98:-14 102:-9 104:-11 107:-14 108:-10 111:-18 113:-14 115:-10 117:35 118:-12 121:-11 125:-42
#n all	13:46 16:-10 17:-9 33:30 43:-13
#d for	0:-22 3:8 36:27 37:21 125:37
ok $	3:13 25:8 30:29 125:99
^ slot	0:26 1:-12 3:-24 4:139 13:-25 18:-13 33:-22 36:21 37:-16 41:-16 42:35 43:64 45:-8 70:-38 71:49 74:89 75:-11 76:-17 78:15 91:48 95:-11 96:-8 104:11 107:-14 108:-8 125:-21
&	0:-46 1:-64 2:-47 4:-44 6:-120 7:46 8:57 9:70 10:58 11:66 12:79 13:-77 14:175 15:-64 16:-14 17:34 18:-25 19:30 20:14 21:44 22:67 24:-15 25:189 26:25 27:43 28:41 29:86 30:31 31:80 32:59 33:-31 34:39 35:117 36:38 37:64 38:-50 39:-36 40:-58 42:-35 43:-45 44:-28 45:-44 46:8 47:-45 48:-59 49:32 50:-32 51:-22 52:-21 53:21 54:-32 55:60 56:43 57:123 58:111 59:-13 60:-50 61:-49 62:-23 63:-35 64:-44 65:-37 66:-16 67:-23 68:11 69:-8 71:-19 73:-11 74:-19 75:14 76:-14 77:-39 78:-21 79:18 80:-23 81:-22 82:18 83:-48 84:-60 85:-35 86:97 87:-23 88:-16 90:25 91:98 92:-17 93:-41 94:40 95:-30 97:-22 98:21 99:14 100:128 101:38 102:45 103:142 104:36 106:18 107:-59 108:112 109:15 111:8 112:-27 113:-62 114:-15 115:-27 116:-28 117:30 118:-42 119:31 120:39 121:-21 122:107 123:54 124:129 125:36
slot job	4:44 13:-8
show==	4:61 5:19 6:13 7:11 8:58 9:-8 10:31 12:55 13:53 14:24 16:51 17:12 19:13 20:14 21:-11 22:-17 23:11 25:23 26:9 28:8 29:14 31:15 32:19 33:25 34:23 35:24 43:-10 57:-9 58:-8 62:-9 83:-13 84:-9 91:-9 100:-11 103:-10 107:-8 108:-10 110:-13 122:-14 123:-19 124:-8 125:-24
show	4:60 5:18 6:13 7:10 8:58 9:-8 10:30 12:48 13:53 14:40 16:50 17:11 18:-8 19:13 20:9 21:-12 22:-17 23:11 25:22 26:9 29:13 31:14 32:19 33:24 34:23 35:24 41:11 43:-11 50:-10 57:-9 58:-8 62:-9 67:22 68:-9 70:-8 71:-8 77:-8 83:-13 84:-9 90:8 91:-10 100:-11 103:-10 107:-8 108:-10 110:-13 115:-9 122:-14 123:-19 124:-8 125:-26
^ show	4:64 5:23 6:14 7:12 8:61 10:35 12:58 13:54 14:26 16:58 17:13 19:15 20:-12 21:-10 22:-16 23:-10 25:10 26:10 29:18 31:15 32:20 33:30 34:23 35:9 43:-10 55:-9 57:-8 62:-8 91:-9 100:-10 103:-9 108:-9 110:-11 122:-13 123:-19 125:-23
show me	0:10 4:51 6:8 7:11 8:18 10:26 14:-8 16:40 19:-9 29:12 31:-9 33:27 35:16 125:-8
me slot	4:44 13:-16 70:10 75:-8
slot of	0:-19 2:-11 3:25 4:42 13:22 18:46 33:-13 36:11 41:-9 43:14 70:-12 71:-13 74:61 104:16 106:14 107:24 108:13 125:-12
me the	4:49 6:31 8:50 9:13 10:34 17:36 19:-9 26:19 29:8 33:-9 64:-8 84:-8 125:24
list==	2:-9 4:34 6:134 7:-13 8:31 9:8 10:153 11:-17 12:55 13:-18 14:45 16:33 17:-11 18:-8 19:31 20:-18 21:-12 22:14 23:45 25:-11 27:10 30:-9 32:21 33:-16 34:20 35:62 43:-18 47:-8 48:20 53:-8 55:-11 65:-9 70:-12 83:-15 84:-16 87:-10 89:-10 91:-9 98:12 99:-11 100:39 101:-11 102:-9 103:-20 105:-8 106:-10 107:-11 108:-23 110:-8 113:-8 114:-8 116:-8 117:-16 118:-10 119:-11 120:13 121:-17 122:10 123:-17 124:-13 125:-24
list	2:-9 4:34 6:134 7:-13 8:31 9:8 10:153 11:-17 12:55 13:-18 14:45 16:33 17:-11 18:-8 19:31 20:-18 21:-12 22:14 23:45 25:-11 27:10 30:-9 32:21 33:-16 34:20 35:62 43:-18 47:-8 48:20 53:-8 55:-11 65:-9 70:-12 83:-15 84:-16 87:-10 89:-10 91:-9 98:12 99:-11 100:39 101:-11 102:-9 103:-20 105:-8 106:-10 107:-11 108:-23 110:-8 113:-8 114:-8 116:-8 117:-16 118:-10 119:-11 120:13 121:-17 122:10 123:-17 124:-13 125:-24
^ list	4:13 8:57 9:-12 10:-21 12:18 16:26 19:20 23:25 26:24 27:30 29:-14 31:19 32:35 34:22 35:41 83:-9 84:-11 100:-9 122:-17 123:-15 125:-8
show slot	4:23
slot on	0:53 1:21 2:-8 4:-13 13:32 16:-9 18:12 33:-10 43:22 74:24 91:-14 106:21 107:-9 108:9
tabl==e	4:91 13:-10 14:31 16:22 17:54 24:20 37:-8 43:-9 58:11 83:-8 91:-8 98:22 107:-8
tabl	4:91 13:-10 14:31 16:22 17:54 24:20 37:-8 43:-9 58:11 83:-8 91:-8 98:22 107:-8
slot tabl	0:-12 4:81
tabl of	0:9 4:41 16:19
^ the	0:-48 1:-24 2:-23 3:-36 4:-19 5:-19 6:48 7:-21 8:-8 9:-30 12:-23 13:69 14:-9 15:-20 16:-28 17:-38 18:-42 19:-25 20:33 21:-28 22:-33 23:-37 25:-39 26:-31 27:-29 28:-32 29:24 30:-12 33:29 35:-19 36:-40 37:-18 38:-16 39:-22 40:39 41:14 42:21 43:25 45:44 46:-11 47:33 48:21 49:-13 50:9 51:35 52:13 53:20 54:11 55:50 57:-16 58:-19 59:15 61:-18 63:9 64:61 65:8 66:9 67:15 68:-29 69:10 70:61 71:-12 73:24 74:38 75:-39 76:43 77:27 79:-26 80:29 81:-33 82:-38 83:-21 84:-22 85:38 87:42 88:42 89:-28 90:-34 92:-22 93:24 94:20 97:-25 98:13 99:56 100:10 101:27 102:60 103:-36 104:-10 105:-30 106:25 107:-24 108:-16 109:9 110:-31 112:64 113:56 116:-19 117:80 118:70 119:43 120:-16 121:49 122:-8 124:22 125:30
tabl for	4:25 17:30
how long	2:-10 4:103 5:-21 8:-17 9:46 11:62 13:-27 16:-22 17:-11 27:111 29:-12 32:76 35:-23 93:-8 125:-8
long is	4:78 9:8 13:-13 27:-26 68:15 86:9
be==	0:16 1:11 2:28 3:17 4:31 5:9 6:-8 7:-10 9:-9 10:26 11:33 13:-59 14:-23 17:-8 19:-17 20:-16 21:-13 22:11 23:-37 25:-20 26:-9 27:11 28:29 29:39 30:28 31:-21 32:17 33:-30 35:-19 36:-17 37:25 39:-16 41:-19 42:-11 44:-31 45:-19 47:23 48:33 49:-8 50:-11 51:38 54:-13 55:23 57:9 58:13 60:13 62:-9 65:13 66:-27 67:-10 68:-10 69:17 70:-8 71:-12 72:-18 75:-15 76:-10 78:-9 80:-22 81:17 83:21 84:-9 86:24 87:-21 89:-18 90:-10 92:-10 93:11 94:-12 95:-24 96:-8 97:-12 98:34 101:47 102:11 103:-11 104:29 105:-24 106:69 107:-14 108:-19 109:-17 111:28 112:15 113:-11 114:21 115:18 117:-19 118:26 120:9 121:-15 122:39 125:38
is slot	4:8
be	0:16 1:11 2:28 3:17 4:31 5:9 6:-8 7:-10 9:-9 10:26 11:33 13:-59 14:-23 17:-8 19:-17 20:-16 21:-13 22:11 23:-37 25:-20 26:-9 27:11 28:29 29:39 30:28 31:-21 32:17 33:-30 35:-19 36:-17 37:25 39:-16 41:-19 42:-11 44:-31 45:-19 47:23 48:33 49:-8 50:-11 51:38 54:-13 55:23 57:9 58:13 60:13 62:-9 65:13 66:-27 67:-10 68:-10 69:17 70:-8 71:-12 72:-18 75:-15 76:-10 78:-9 80:-22 81:17 83:21 84:-9 86:24 87:-21 89:-18 90:-10 92:-10 93:11 94:-12 95:-24 96:-8 97:-12 98:34 101:47 102:11 103:-11 104:29 105:-24 106:69 107:-14 108:-19 109:-17 111:28 112:15 113:-11 114:21 115:18 117:-19 118:26 120:9 121:-15 122:39 125:38
#n be	3:16 4:12 17:14 30:36 41:-9 73:13 125:20
be $	4:28 27:-10
is fret	3:23 4:19 17:96 27:-13 41:-15 70:10 73:24 77:-9 89:-16 125:-13
long are	4:17 27:-15 28:8
@job be	4:8 5:-9 11:-9 18:23 29:63 43:-8 64:12 115:16
&#o@job	0:68 1:-8 2:-13 11:-15 13:-8 16:17 18:-8 27:-12 30:14 32:-10 43:-10 45:22 47:17 71:21 77:30 78:26 89:17 90:10 93:14 95:25 97:12
fret slot	0:-16 16:10 36:-9 44:8 45:11 75:18 77:10 78:27 95:27 96:20
fret the	4:8 36:-8 42:32 43:-8 89:9 91:14 93:-8 95:8 97:14
#o on	0:10 4:8 12:30 33:-8 41:-9 45:-16 47:-12 54:-9 70:13 77:43 78:28 89:-8 92:28 93:12 95:39 97:9
cut==s	5:80 6:66 13:-10 14:13
cut	1:8 2:8 3:-19 4:-27 5:272 6:238 7:-17 8:-23 9:-25 10:-18 11:-24 12:-27 13:30 15:-16 16:-31 17:-29 18:-19 19:-12 20:9 22:-13 23:-22 25:-15 26:-10 27:16 28:-8 29:-36 30:-17 32:-22 36:-24 37:-19 38:-11 39:-8 40:-10 41:-17 42:26 43:139 44:-15 45:-21 47:-14 48:-14 49:-8 50:-11 57:10 60:9 64:-14 65:-12 66:-15 68:13 69:18 70:116 71:167 72:-9 73:-11 74:17 75:-21 77:-18 78:58 82:-19 83:-24 84:-19 87:-15 89:-13 90:-8 91:-19 92:-9 93:-9 95:-12 96:-13 97:-16 98:-9 99:-12 100:-9 101:-9 103:14 104:26 105:-13 106:-9 107:42 108:11 110:-8 113:-16 114:-16 115:-14
)~",
R"~(^ cut	0:-8 1:-10 5:26 6:13 13:-11 30:-8 35:26 36:-11 37:-12 41:-9 42:9 43:53 57:14 70:128 78:46 82:-15 99:-9 103:24 104:26 108:-8 125:32
cut $	4:-8 5:54 6:-20 13:25 43:30 71:44 107:28 108:10 125:-10
only==	0:-23 1:103 2:33 3:42 4:67 5:79 6:-8 8:-25 9:-16 12:-9 13:-21 15:-10 16:15 17:20 18:-20 19:-12 20:-17 21:35 22:42 23:-11 24:-12 28:-15 29:-24 31:-11 32:-10 33:12 36:-10 38:-13 40:-11 41:-11 42:8 43:-21 44:48 45:46 47:-8 48:-8 50:-14 52:-36 54:63 55:-19 57:8 58:46 60:-11 61:9 62:-8 63:-9 64:-11 65:-11 66:45 69:31 73:10 75:-21 77:-15 81:-9 87:-17 89:-22 91:-13 93:-9 99:14 101:-11 105:-16 107:-24 108:-12 109:-23 110:-25 111:81 113:-10 114:30 115:-8 118:16 119:-8 120:-11 121:24 125:-33
only	0:-23 1:103 2:33 3:42 4:67 5:79 6:-8 8:-25 9:-16 12:-9 13:-21 15:-10 16:15 17:20 18:-20 19:-12 20:-17 21:35 22:42 23:-11 24:-12 28:-15 29:-24 31:-11 32:-10 33:12 36:-10 38:-13 40:-11 41:-11 42:8 43:-21 44:48 45:46 47:-8 48:-8 50:-14 52:-36 54:63 55:-19 57:8 58:46 60:-11 61:9 62:-8 63:-9 64:-11 65:-11 66:45 69:31 73:10 75:-21 77:-15 81:-9 87:-17 89:-22 91:-13 93:-9 99:14 101:-11 105:-16 107:-24 108:-12 109:-23 110:-25 111:81 113:-10 114:30 115:-8 118:16 119:-8 120:-11 121:24 125:-33
tin only	5:67 18:-8 21:-15 22:-8
only ~	5:12 54:16 111:-16
~ wire	18:-8
&#n@job@wire	1:26 18:27 23:13 70:-10 71:11 72:10
stick==s	0:-16 1:-12 5:12 6:36 8:63 9:-28 18:-10 20:-14 22:-8 31:26 32:-13 38:-9 39:-28 46:-25 49:19 50:72 51:-13 66:86 67:58 68:-22 79:-16 88:-13 98:-8 116:26 117:49 118:-23 119:-13 120:58 121:35 125:49
cut @wire	5:15
@wire stick	8:12 9:-9 39:12 46:-10 50:38 67:46 116:36 117:-24 118:-8 125:8
stick #n	3:-11 46:-12 49:23 50:-22 66:33 70:-22 71:94
cut the	2:-12 4:-8 5:48 6:19 33:17 42:23 43:-10 71:39 107:8
cut==	0:-14 3:-17 4:-34 5:125 6:146 7:-9 8:-12 9:-17 10:-11 11:-14 12:-21 13:48 15:-13 16:-23 17:-22 18:-11 20:15 22:-9 23:-16 27:-15 29:-11 32:-8 33:14 35:14 36:-21 37:-15 38:-8 41:-16 42:32 43:100 44:-11 45:-18 47:-10 50:-8 57:14 60:11 66:-14 68:15 69:21 70:124 71:175 72:-8 73:-8 74:18 75:-20 77:-16 78:60 82:-18 83:-16 84:-15 87:-11 89:-9 91:-15 92:-8 95:-10 96:-12 97:-14 108:-14 113:-11 114:-11 115:-9 125:-19
plan==	2:53 5:118 6:-23 13:-10 16:38 26:-12 29:93 37:-10 43:-9 83:80 84:-9 105:-10 109:-13 110:-15
from==	1:-18 2:-26 3:-42 4:17 5:63 6:24 7:-14 8:-28 9:-41 11:-11 13:-33 14:-22 15:-14 16:-37 17:-39 18:-22 19:23 20:29 22:-32 23:-20 24:24 25:-32 26:-25 27:-19 28:43 29:14 30:-26 31:-34 32:46 33:-19 35:-21 37:-25 40:-11 41:-41 42:-34 43:-30 44:-22 45:32 46:-8 48:21 50:60 51:36 52:33 53:15 54:-16 55:36 57:21 58:21 59:-33 60:61 61:15 63:-17 64:-20 65:57 66:-14 68:-10 69:-14 70:97 71:23 72:52 73:58 74:-17 75:33 76:-8 78:27 79:-15 80:21 81:-13 83:-11 84:-9 85:-18 86:23 87:47 88:-18 89:26 90:-14 92:-17 93:-25 94:-9 95:-38 96:-23 97:-29 98:-12 99:10 100:30 101:37 102:-15 103:9 105:29 106:-19 107:-22 108:-25 110:50 111:38 112:-26 113:-15 114:-20 115:-16 116:29 117:20 118:-30 120:77 121:33 122:63 124:-9 125:10
show the	5:10 8:19 10:9 12:33 14:17 25:13 28:10 29:8 32:18 34:9 122:-9
the cut	5:45 6:72 13:-11 14:12 27:19 35:-8 43:25
cut plan	5:119 6:-17 29:-16
from	1:-18 2:-26 3:-42 4:14 5:63 6:24 7:-14 8:-28 9:-41 11:-12 13:-33 14:-22 15:-14 16:-38 17:-39 18:-22 19:23 20:29 22:-32 23:-20 24:24 25:-32 26:-25 27:-19 28:39 29:13 30:-26 31:-34 32:46 33:-20 35:-21 37:-26 40:-12 41:-42 42:-34 43:-30 44:-23 45:30 46:-8 48:21 50:60 51:35 52:43 53:14 54:23 55:36 57:21 58:21 59:-33 60:61 61:15 63:-18 64:-21 65:56 66:-14 68:-10 69:-14 70:94 71:22 72:52 73:57 74:-17 75:27 76:-8 78:27 79:-15 80:21 81:-14 83:-11 84:-10 85:-18 86:23 87:47 88:-18 89:18 90:-15 92:-18 93:-25 94:-9 95:-38 96:-23 97:-30 98:-12 99:8 100:30 101:37 102:-15 103:9 105:49 106:-19 107:-23 108:-25 109:23 110:47 111:17 112:-26 113:-15 114:-20 115:-18 116:29 117:20 118:-31 120:76 121:33 122:63 124:-9 125:8
@wire from	1:-8 6:-8 9:-8 19:41 20:16 32:42 33:-10 39:10 50:14 51:11 72:13 80:11 82:-15
from #n	4:13 16:-8 28:-10 41:-8 50:-9 51:28 53:28 54:51 70:39 71:-34 75:-14 82:-19 87:16 95:-8 99:-10 101:11 105:46 109:40 110:25 111:33 116:-8 125:-20
plan $	29:67 83:19
plan of	5:27 16:25
cut==ting	0:10 1:11 4:9 5:69 6:28 8:-10 27:34 29:-20 30:-9 32:-13 35:-8 43:30 104:9 107:45 108:22 125:32
for @wire	0:-8 1:-13 6:67 7:10 8:24 9:-11 19:8 20:49 22:-11 23:-22 69:17 119:15 125:32
from stick	3:-10 5:14 13:-8 41:-15 70:-18 71:81
stick of	5:13 9:-9 31:37 39:-14 50:58 66:21 67:27 71:-8 79:-12 116:22 125:43
of #d	0:-8 2:-11 3:-17 18:15 33:21 41:21 42:-14 50:8 66:-17 70:21 71:-9 72:18 74:10 76:21 78:-16 81:13 82:33 92:8 117:9 125:-13
^ a	0:-14 1:16 3:-9 27:-9 41:-10 42:23 50:32 55:21 67:-31 68:53 76:8 78:18 79:25 82:-10 90:8 92:12 97:-9 99:12 103:18 125:-9
a cut	55:11
from #d	70:28 78:-8 80:14 82:-17 87:40
@job from	3:-12 4:14 6:13 36:-9 41:-16 45:8 65:27 70:72 78:-8 82:-9
#n from	0:-11 1:22 3:-20 4:-12 5:-27 6:25 36:10 41:-20 42:-13 45:50 48:23 52:9 65:55 70:39 71:32 75:37 76:-11 77:8 82:8 87:16 93:-12 95:-26 97:-12 125:-18
what do	0:-16 5:13 6:13 8:41 9:43 10:19 11:31 16:-19 17:68 18:18 22:-9 23:23 25:24 26:-9 27:24 29:-27 30:-8 31:-16 32:-19 33:-21 35:-31 125:-8
we cut	5:22 6:25 71:15 78:10
must==	2:10 3:13 5:-13 6:49 9:16 10:18 11:34 13:-12 18:17 23:-14 32:-8 33:-13 43:-8 47:36 51:21 57:18 60:13 77:11 80:-10 84:11 98:19 100:-8 104:13 114:29 120:18 122:9 125:-9
must	2:10 3:13 5:-13 6:49 9:16 10:18 11:34 13:-12 18:17 23:-14 32:-8 33:-13 43:-8 47:36 51:21 57:18 60:13 77:11 80:-10 84:11 98:19 100:-8 104:13 114:29 120:18 122:9 125:-9
what must	6:25 10:21 11:15 18:23 29:-9 33:-10
must we	6:20 18:14
what should	0:-19 4:37 5:-8 6:15 17:47 18:27 22:11 29:27 33:-15 125:-9
i cut	0:16 2:10 5:51 6:39 16:-8 17:-8 35:-9 42:13
must i	5:-10 6:33 11:11 17:10
of #n	0:-8 1:-12 2:-9 4:-9 7:16 11:22 22:39 30:24 33:-10 36:-12 41:-13 43:-8 47:46 70:14 71:-14 74:8 75:18 79:29 82:-8 90:17 91:-10 98:-11 99:10 110:10 113:63 116:-16 120:38 121:18 125:-14
fret for	2:-11 3:-10 4:-15 6:-9 41:24 42:11 43:36 70:-28 71:-9 72:-10 77:16 78:37 82:57 107:19
cut job	6:29
what if	0:39 1:30 5:21 16:86 22:-13 27:-10 29:-9 33:-18 44:-10 125:22
i only	5:11 44:10
only use	5:17
use only	5:14 73:11
only the	5:11 7:9 11:10 22:59 73:11
if we	1:14 5:35 6:-9 24:9
we only	44:8 100:10
piece==s	0:15 1:-20 5:34 6:38 8:98 9:-23 10:-9 11:-8 13:-13 16:-10 17:-9 18:-9 19:-17 20:-9 21:-8 22:105 23:34 25:-12 27:-14 29:-8 32:-8 33:-9 38:-8 39:14 40:-21 41:-8 42:-10 50:-10 66:-11 70:-46 71:-10 79:58 81:117 82:92 83:53 84:8 85:-8 95:-9 96:-8 97:-15 125:-10
what piece	5:15 22:28 23:12
piece should	5:16
piece can	5:20
fret could	5:11
which piece	0:-15 5:38 6:16 22:50
from the	0:27 1:24 3:-8 4:34 5:40 11:-8 12:-9 13:-9 16:-12 17:-9 20:16 22:-14 25:-14 27:-11 28:20 30:-10 32:-35 33:-17 36:19 38:17 41:11 43:-10 47:-8 48:49 50:22 57:17 71:-9 72:15 73:12 77:9 78:-22 80:8 86:26 89:25 100:56 103:-10 104:19 110:33 111:-8 118:-13 121:-12 122:39 125:-31
only $	1:80 2:17 5:49 17:-8 21:43 52:-9 54:14 58:12 107:-8 111:12 125:-9
alon==e	0:-9 2:-9 5:60 50:14 97:11
alon	0:-9 2:-9 5:60 50:14 97:11
tin alon	2:-9 5:53
alon $	5:17 97:11
everyth==ing	2:-8 5:35 6:-28 8:57 9:17 11:34 12:-10 13:-10 17:19 18:-8 23:-15 26:-12 29:30 33:84 34:-8 35:-12 37:-16 43:14 47:-10 48:-9 52:-20 53:-8 73:21 83:89 84:87 108:-9 110:-9 117:8 123:10 125:-11
everyth	2:-8 5:35 6:-28 8:57 9:17 11:34 12:-10 13:-10 17:19 18:-8 23:-15 26:-12 29:30 33:84 34:-8 35:-12 37:-16 43:14 47:-10 48:-9 52:-20 53:-8 73:21 83:89 84:87 108:-9 110:-9 117:8 123:10 125:-11
for everyth	5:28 6:-21 9:22
everyth $	5:42 6:-22 17:28 33:27
^ me	9:11 29:20 110:9
job==s	5:23 6:-21 8:-20 9:79 11:27 12:271 13:-9 14:46 19:-13 24:-8 25:-16 26:-12 27:-8 28:-9 29:19 32:-8 33:-16 35:-12 58:-9 61:-16 62:-11 63:-9 64:-16 83:-9 84:9 103:-10 125:-10
for all	5:39 7:8 8:27 20:-13 26:21 35:-10 53:10 69:20 93:9
all job	5:27 12:-14
job $	5:26 12:78 13:18 14:-8 17:-9 23:33 29:-26 35:11 43:-9 46:34 48:71 58:-10 64:12 65:45 95:49 103:22 106:-9 108:-16 125:-40
of everyth	11:10
print==	5:25 6:45 7:34 48:19 107:-17 108:18
print	5:25 6:47 7:34 48:19 107:-18 108:18
^ print	5:28 6:12 7:32
print the	5:11 6:8 7:10
)~",
R"~(cut list	5:9 6:129 10:-8 35:27 43:-8 70:-8
list for	5:8 6:54 8:-8 9:34 10:53 23:-13 35:-11 100:12
print me	5:18
me cut	5:16
list of	4:28 5:12 6:19 10:41 12:21 25:-11 31:-22 35:26 57:18 58:11 98:19 100:21 108:-8 120:15 122:10
of all	5:15 8:57 9:-20 12:25 20:13 21:-12 28:35 29:-11 33:-9 48:10 68:-8 69:16 84:39
all of	5:11 6:-8 8:-9 16:40 43:36 44:21 52:22 53:15 71:10 81:24 83:29 84:34 111:-8 125:10
of it	5:12 9:22 36:11 44:14 50:10 57:11 59:14 62:-9 63:10 70:9 83:29 84:18 116:-8 117:15
it $	0:31 1:9 2:-9 4:23 6:-11 8:-22 9:9 11:-15 13:11 15:19 16:-18 17:16 18:-13 21:14 23:-11 26:-8 28:-8 29:-15 30:17 31:-8 32:-9 33:20 35:-20 38:18 40:20 45:-11 48:16 50:-9 51:-8 52:-13 53:15 55:16 57:9 60:17 62:-11 63:8 64:9 65:49 66:-12 70:19 73:-8 75:-12 77:29 83:30 87:8 89:-22 90:19 91:-15 92:10 95:-12 100:26 101:-17 102:13 106:32 108:-19 112:11 113:-13 114:-10 115:-12 117:11 124:34
queu==e	5:21 8:-20 9:41 12:115 14:-8 25:-8 48:60 65:-9 87:-10 114:45 125:-17
queu	5:21 8:-20 9:41 12:115 14:-8 25:-8 48:60 65:-9 87:-10 114:45 125:-17
the queu	8:-19 9:43 12:78 48:64 87:-9
queu $	5:23 8:-14 9:17 12:119 14:-8 25:-8 48:18
cut everyth	5:11
whol==e	4:-9 5:18 8:-11 11:-9 14:41 16:26 17:27 19:-10 20:29 21:-13 23:-8 25:-8 27:10 30:32 32:13 37:-10 53:17 54:10 57:12 63:9 73:-12 83:9 84:19 117:12 125:-11
whol	4:-9 5:18 8:-11 11:-9 14:41 16:26 17:27 19:-10 20:29 21:-13 23:-8 25:-8 27:10 30:32 32:13 37:-10 53:17 54:10 57:12 63:9 73:-12 83:9 84:19 117:12 125:-11
the whol	1:9 5:21 14:8 16:29 20:14 21:-9 37:-9 53:18 54:10 57:12 73:-11 83:12 84:22 87:8 117:14
whol queu	5:24
cut all	43:63
i need	4:21 5:9 7:10 16:12 20:21 26:-12 27:11 28:23 33:56 35:24 103:-8 105:13 106:-8 108:-10
need to	4:-8 5:25 6:-8 9:48 11:11 27:12 29:-12 31:-9 37:-18 38:-10 52:-11 122:14 125:106
to cut	1:8 5:30 6:-9 12:-17 13:49 107:15 125:11
cut for	2:8 6:11 13:49 43:34 107:12 108:19
all the	4:12 5:24 6:-12 9:34 11:-10 12:21 17:22 19:-19 20:13 23:31 27:9 28:28 29:-9 31:11 32:18 33:-15 35:-12 43:22 44:11 45:-17 54:-9 70:-10 81:17 82:25 83:23 84:41 89:-11 107:-11 123:9 125:-10
next==	0:-14 1:-17 2:-12 4:-11 5:9 6:-20 8:-14 9:-12 10:19 11:23 12:-15 13:-43 14:-10 15:-15 16:98 17:89 18:-9 19:-9 20:-9 22:-16 23:-32 24:-12 25:21 26:46 27:57 28:46 29:67 30:39 31:36 32:-9 33:-30 35:-15 36:55 41:-14 43:-21 44:70 45:-8 48:-9 50:-33 52:-15 53:16 54:9 61:-12 62:-24 63:-16 64:-14 65:-11 66:-21 72:-16 75:-10 81:-9 83:-10 84:-10 87:-12 89:-8 91:-9 92:10 94:-11 95:-10 99:-8 100:-8 101:29 102:-9 105:14 106:28 107:11 108:-18 109:-27 110:33 111:29 112:33 113:60 114:-13 115:24 118:15 125:31
next	0:-15 1:-18 2:-13 4:-12 5:8 6:-21 8:-16 9:-13 10:18 11:29 12:-16 13:-44 14:-10 15:-16 16:95 17:90 18:-9 19:-10 20:16 22:-17 23:-34 24:-12 25:20 26:50 27:55 28:51 29:72 30:44 31:34 32:-10 33:-18 35:-16 36:55 38:-8 40:-8 41:-14 43:-21 44:69 45:-10 47:20 48:-9 50:-35 52:-56 53:60 54:43 55:-9 61:-17 62:-26 63:-17 64:-15 65:-12 66:-22 72:-16 75:-11 77:-9 81:-10 83:-11 84:-10 87:-12 89:-9 90:-8 91:-10 92:9 94:-11 95:-10 97:-10 99:-9 100:-9 101:39 102:-11 104:-8 105:16 106:25 107:10 108:-20 109:-47 110:24 111:39 112:30 113:59 114:-13 115:16 118:36 121:-9 125:9
cut next	5:17
next $	5:10 11:-15 16:30 17:23 25:43 26:-38 29:36 72:-11 113:75 125:17
we need	6:9 7:33 9:17 10:23 11:-11 25:23 27:11 29:-9 105:16 125:-16
fret would	0:-12 5:40
work for	5:14 110:19
piece would	5:24
work in	5:10 14:43
list job	6:18
list the	0:17 12:22 14:-18 25:12 26:10 27:29 32:20 34:10 122:-9
list $	6:34 10:20 12:20 14:36 35:-12 48:26 100:20 122:23
draw==	6:21
draw	6:21
^ draw	6:21
cut from	6:13 70:39 71:33 78:-9
from @wire	5:-14 6:15
cut fret	0:-8 42:17 43:9 71:13
from $	1:-18 5:-29 6:34 9:-8 10:20 19:18 32:60 33:26 70:29 125:-11
i open	6:16
open for	5:-8 6:39 28:18
which stick	5:34 6:34 15:-9
stick do	6:24
we open	6:23 9:-8 28:88 29:-9 54:-14 112:23
stick must	6:17
many==	2:-14 4:-9 6:36 8:36 9:39 12:17 13:12 14:40 19:-13 22:42 24:-10 25:86 29:-9 32:-17 35:-15 58:-10 66:-15 98:22 99:13 104:-13 125:-19
many	2:-14 4:-9 6:36 8:36 9:39 12:17 13:12 14:40 19:-13 22:42 24:-10 25:86 29:-9 32:-17 35:-15 58:-10 66:-15 98:22 99:13 104:-13 125:-19
how many	2:-13 6:38 8:39 9:41 12:8 13:13 14:47 19:-12 22:-8 24:-10 25:89 27:8 29:-8 32:-16 35:-13 66:-14 104:-12
many stick	6:16 8:36 9:-15 66:-11
do job	2:-8 5:13 6:17 15:61 17:-14 29:-8 33:-9 43:-9 64:19 113:20 114:25 125:-18
#n take	4:22 6:33 27:-9 35:20 73:23 83:15
take $	0:-13 4:37 5:29 6:62 13:-9 27:37 32:16 83:23
piece do	6:24
do @job	6:11 17:-9 64:26 113:19
@job take	0:-22 1:33 4:21 5:42 6:16 16:17 27:-9 36:-12 73:13
stick doe	5:30 6:19 8:16 9:-9 15:-9
@job need	5:-9 6:25 37:10 47:19 113:10
many piece	6:28 8:18 9:-8
piece doe	6:18
doe job	1:-8 2:-8 5:33 6:20 13:14 15:59 16:-9 17:-9 33:-8 64:23 65:33 125:-15
much==	2:-10 4:-14 6:42 8:46 11:-9 13:-43 19:41 20:19 21:81 23:35 24:12 25:-15 27:13 29:49 31:12 32:-20 35:-18 42:19 55:13 84:-8 125:33
much	2:-10 4:-14 6:42 8:46 11:-9 13:-43 19:41 20:19 21:81 23:35 24:12 25:-15 27:13 29:49 31:12 32:-20 35:-18 42:19 55:13 84:-8 125:33
how much	2:-9 4:-13 6:42 8:47 11:-8 13:-43 19:41 20:19 21:82 23:35 24:12 25:-15 27:13 29:52 31:12 32:-20 35:-18 125:37
much wire	6:25 8:26 9:-13 21:16 23:14
wire doe	6:25
new==	0:-28 1:-11 2:21 3:-16 4:-22 5:62 6:19 7:21 8:-31 9:-32 10:-20 11:-13 12:-11 13:-27 14:-11 15:-8 16:-21 17:-14 18:-16 20:-13 21:14 22:-11 23:-13 24:-9 25:-8 26:-9 27:11 29:-24 30:69 31:-12 32:-14 33:-14 35:16 36:-13 41:-31 42:-12 43:-11 44:-8 45:-8 46:90 47:36 48:-8 49:65 50:-8 57:-8 58:117 60:-24 61:-12 64:-8 65:-8 70:-19 71:128 73:-8 75:-14 76:-8 77:-15 78:117 80:-11 83:16 85:28 87:-13 88:-12 89:-9 91:-14 93:-9 95:8 96:-8 97:-10 98:99 99:-20 100:-15 103:-11 104:-8 105:-16 108:-13 117:-8 118:12 120:56 121:-15 122:-13 125:41
new	0:-28 1:-11 2:21 3:-16 4:-22 5:62 6:19 7:21 8:-31 9:-33 10:-20 11:-14 12:-11 13:-27 14:-11 15:-8 16:-21 17:-14 18:-16 20:-13 21:14 22:-12 23:-13 24:-9 25:-10 26:-9 27:10 29:-24 30:69 31:-14 32:-14 33:-14 35:15 36:-13 41:-31 42:-12 43:-11 44:-8 45:-8 46:90 47:36 48:-8 49:65 50:-8 57:-8 58:116 60:-24 61:-12 64:-8 65:-8 70:-19 71:128 73:-8 75:-14 76:-8 77:-15 78:117 80:-11 83:16 85:28 87:-13 88:-12 89:-9 91:-14 93:-9 96:-8 97:-10 98:98 99:-21 100:-15 101:-8 102:10 103:-11 104:-8 105:-16 108:-13 117:-8 118:15 119:-8 120:56 121:-15 122:-14 125:41
much new	5:38 6:35 21:13 27:-12
new wire	4:-10 5:67 6:16 8:-13 9:-19 19:-8 21:10 27:-12 41:-8 49:72 58:-14 70:-14 71:57 78:39 83:21 98:-8
wire will	5:32 6:20 27:-9 118:12
will job	5:-9 6:17 29:12
doe @job	6:8 65:18
will @job	5:-8 6:12 29:8
will i	6:9
will we	6:14 29:18
new do	6:9
new @wire	21:13
@wire do	8:-12 9:60 32:-13
^ do	4:-8 6:21 8:15 9:42 10:-23 11:-13 13:-10 15:-10 16:-9 17:-23 20:18 22:36 23:-12 25:-9 26:-12 28:32 29:35 31:-8 37:-11 38:21 40:-10 43:-8 51:26 64:30 65:-9 81:-8 100:-9 105:-14 106:-30 110:-11 111:-15 112:20 113:36 114:59 122:-16 125:141
have enough	6:32
enough the	6:28 9:10
ther enough	6:22 8:-13 9:50 18:-8
&@job@wire	1:-10 6:9 9:-8 18:100 23:-9
enough wire	6:12
wire for	18:15 43:57 73:12
enough @wire	8:-14 9:43
mark==s	6:62
mark	3:-16 6:65 16:24 43:14 83:15
the mark	3:-16 6:61 16:25
mark for	6:26
give==	1:-13 6:19 8:25 11:-14 13:18 17:23 21:-8 23:-15 25:9 29:9 30:18 33:-9 35:-8 37:-8 38:41 43:-10 51:8 63:-8 64:69 65:-10 83:-29 84:50 104:15 106:48 107:-9 108:-8 113:22 115:28 125:9
give	1:-14 5:-10 6:19 8:25 11:-17 13:17 16:12 17:23 21:-8 23:-16 25:9 30:36 33:-10 35:-8 37:-8 38:41 43:-10 51:8 63:-10 64:63 65:11 83:-29 84:44 104:15 106:47 107:-12 108:-9 113:22 115:28 120:18
^ give	4:-8 6:13 16:8 17:28 23:-8 24:-8 29:14 38:34 43:-8 51:9 64:107 83:-12 84:23 104:16 106:34 113:25 115:11 125:-21
give me	8:27 13:36 16:13 17:31 24:8 29:19 64:-10
cut of	6:39 13:-8
draw me	6:14
label==s	7:267 8:-10 19:-8 39:-10
label	7:271 8:-11 19:-8 39:-10
^ label	7:77
label $	7:80
step==	27:32 30:-26 55:54
step	7:37 27:94 30:-33 55:54 67:13 68:-9
label the	7:9
print label	7:22
label for	7:66
every==	0:-12 4:25 7:30 8:17 16:12 19:44 22:-9 23:-10 28:-15 29:-11 31:-17 33:35 39:-8 40:-11 43:22 52:81 53:-14 54:-26 67:13 68:-9 81:31 92:9 109:50 110:-12 111:-11 117:25
)~",
R"~(label of	7:18
every	0:-12 4:25 7:30 8:17 16:12 19:44 22:-9 23:-10 28:-15 29:-11 31:-17 33:35 39:-8 40:-11 43:22 52:81 53:-14 54:-26 67:13 68:-9 81:31 92:9 109:50 110:-12 111:-11 117:25
every #n	0:-8 7:24
step==s	7:40 27:63 67:14 68:-9
@wire in	9:-8 18:58 20:12 22:-19 39:27 50:24 69:15 81:-10 82:20 125:10
in step	7:18
step of	7:18
bin==	0:-14 1:-13 3:16 7:24 22:18 36:-15 38:-21 39:-10 40:137 42:-11 48:18 55:49 81:118 82:-22 88:-8 125:-11
bin	0:-18 1:-19 3:15 6:-9 7:185 8:-17 9:-13 11:-9 19:-8 20:10 22:12 23:-9 33:-12 35:-11 36:-20 38:-25 39:-12 40:161 42:-11 48:18 55:48 69:-9 70:-9 81:125 82:-24 88:-9 125:-13
the bin	0:-9 3:10 7:40 20:13 38:-9 40:72 42:-9 55:33 81:8
bin label	7:31
every #d	7:9 40:-10 81:33
by==	0:-9 1:-12 2:-9 3:-29 4:-21 5:-15 7:24 10:-23 11:60 13:-9 16:-28 17:-22 18:-20 22:-11 23:25 24:53 25:-13 28:-12 30:130 31:-16 32:29 36:-15 37:58 38:-20 39:-18 42:26 44:-18 45:-16 46:-12 47:43 48:-16 50:-20 51:-12 53:-9 55:-8 65:-8 67:18 68:-21 69:55 70:-8 71:-8 72:-9 73:-14 74:28 75:-13 76:13 77:-9 79:30 80:-14 81:-10 82:-8 83:33 85:46 88:12 89:14 91:-9 92:26 93:-8 97:16 100:8 103:-10 104:22 105:-8 108:-15 110:-8 113:-11 114:-13 115:-9 118:-11 120:23 125:24
by	0:-9 1:-12 2:-9 3:-29 4:-21 5:-15 7:24 10:-23 11:60 13:-9 16:-28 17:-22 18:-20 22:-11 23:25 24:53 25:-13 28:-12 30:130 31:-16 32:29 36:-15 37:58 38:-20 39:-18 42:26 44:-18 45:-16 46:-12 47:43 48:-16 50:-20 51:-12 53:-9 55:-8 65:-8 67:18 68:-21 69:55 70:-8 71:-8 72:-9 73:-14 74:28 75:-13 76:13 77:-9 79:30 80:-14 81:-10 82:-8 83:33 85:46 88:12 89:14 91:-9 92:26 93:-8 97:16 100:8 103:-10 104:22 105:-8 108:-15 110:-8 113:-11 114:-13 115:-9 118:-11 120:23 125:24
@wire by	24:9 37:17 69:19 79:28
by #d	3:-19 7:14 41:-17 42:28 69:15 74:8 80:-16 85:17 88:14 92:44
^ bin	1:-8 7:20 38:-10 40:69 81:77 82:-12
the label	7:37
need label	7:16
bin==s	7:160 8:-13 9:-10 20:14 35:-9
bin $	0:-11 3:10 7:26 36:-9 38:-9 40:70 81:32
drawer==s	7:30
drawer	1:-22 2:-8 3:-9 7:39 8:16 18:-8 22:40 30:-9 36:10 39:42 42:12 72:10 78:8 79:26 80:-12 82:8 125:17
the drawer	0:10 7:21 36:14 79:-18 125:22
drawer $	8:19 22:23
by #n	30:47 47:-12 69:38 74:25 85:18 89:-14 125:26
goe==s	0:12 3:-8 4:17 7:30 8:-8 9:11 11:-9 13:-11 16:31 17:-12 18:-8 25:-9 26:-12 33:-10 35:15 36:65 40:34 42:-11 44:-8 64:31 65:-9 67:9 77:-8 86:13 87:-10 91:-13 93:35 94:11 101:28 111:20 114:26
goe	0:12 3:-8 4:17 7:30 8:-8 9:11 11:-9 13:-11 16:31 17:-12 18:-8 25:-9 26:-12 33:-10 35:15 36:65 40:34 42:-11 44:-8 64:31 65:-9 67:9 77:-8 86:13 87:-10 91:-13 93:35 94:11 101:28 111:20 114:26
what goe	7:34
goe on	7:34 9:13 16:24
bin of	7:10
what bin	7:43 8:-8
bin are	7:55 8:-8 35:-8
are ther	0:-11 7:48 8:15 9:-8 11:-9 14:-15 17:10 19:12 22:-12 25:43 29:-9 32:21 35:29
ther $	0:25 7:33 8:57 9:-16 11:-13 14:74 15:-14 19:20 22:-25 25:11 26:-12 29:-10 32:15 33:-8 35:42 93:9 125:-18
ther of	7:10 8:19
which bin	7:36
bin do	7:23
stock==	0:16 1:-11 2:-12 5:11 8:97 9:16 19:-17 20:-9 21:-8 22:15 31:-8 32:-8 39:-16 49:11 50:31 51:10 66:41 71:19 79:-8 88:-8 116:-10 125:31
stock	0:16 1:-11 2:-12 5:11 8:97 9:16 19:-17 20:-9 21:-8 22:15 31:-8 32:-8 39:-16 49:11 50:31 51:10 66:41 71:19 79:-8 88:-8 116:-10 125:31
^ stock	8:99 9:32 19:-11 50:-9 125:-8
stock $	8:68 9:-11 50:19
piece have	22:11
have of	8:14
got $	8:74 9:-10 11:-19 12:-8 25:25
have $	8:49 9:-10 10:-15 11:-27 12:15 14:36 19:19 22:-9 23:-9 25:57 27:22 29:-8 32:14 35:-8
many short	8:18 9:-12
got of	33:12
we $	0:25 8:15 9:-16 21:-10 25:11 32:22
@wire are	8:53 9:-10 50:-19 88:9 116:28
are in	0:-9 7:18 12:20 50:10 53:12 72:11 82:22
@wire have	8:20 19:12 70:-9 82:12
wire do	8:19 9:-23 10:51 32:-8
what wire	5:-8 8:31 9:-10 10:46
wire have	8:12 9:15 10:-9 19:18
what have	0:21 8:53 9:-17 10:-12 11:-38 12:22 13:22 19:-12 21:20 22:-8 23:9 25:-18 26:12 29:-24 31:20 33:54 34:23 125:-9
is in	1:-9 3:-9 8:69 11:-8 12:40 14:23 15:-10 21:-9 22:-26 23:-8 25:-13 26:-11 28:24 36:9 39:14 41:-20 42:8 53:-9 55:28 72:-9 75:64 77:-14 78:15 89:-9 91:-15 96:11 101:-9 102:9 110:-19 111:46 125:-11
much the	8:15 9:9 31:8
@wire is	1:-8 3:-17 8:56 9:-31 18:9 19:-11 20:-8 21:-9 22:-8 24:-9 31:14 39:-19 40:28 50:-9 51:85 66:18 67:13 69:15 80:16 81:19 88:10 92:-14 118:36 119:19 125:-28
much @wire	8:16 9:25 20:22 21:-14 31:12
left==	0:-10 1:-8 8:49 9:23 11:-10 13:28 14:27 15:-12 16:-9 17:24 19:-19 20:20 21:-11 22:-11 23:-14 27:51 29:9 33:-11 50:-21 61:-8 62:90 63:-18 66:74 67:23 68:-16 99:49 116:-10 119:8 125:-14
left	0:-10 1:-8 8:49 9:23 11:-10 13:28 14:27 15:-12 16:-9 17:24 19:-19 20:20 21:-11 22:-11 23:-14 27:51 29:9 33:-11 50:-21 61:-8 62:90 63:-18 66:74 67:23 68:-16 99:49 116:-10 119:8 125:-14
is left	8:22 9:-13 11:-8 13:27 17:26 19:-12 20:13 23:-9 27:35 66:39 67:22 68:-12
left $	1:-9 9:29 14:12 50:-16 62:17 66:61 67:13 68:-8 99:40 119:10 125:-10
piece of	2:10 8:28 22:18 39:18 70:-10 79:20 82:11 84:10
stock of	8:51 9:-11 22:-12 50:-9 51:22 125:45
left of	8:27 13:-22 27:46
the the	8:12 9:-14 19:-8 31:17 33:9 117:20 118:16 119:11 125:-8
wire $	5:44 6:-11 8:51 9:72 10:20 19:-16 21:-16 23:-20 27:16 29:-8 32:-16 33:13 35:-15 43:-9 49:13 70:-9 71:23 78:23 83:17 84:-9 91:14 121:33 125:8
spar==e	8:11 21:17 39:19 65:9
is to	0:22 1:-15 8:21 9:-8 10:26 11:9 13:24 15:-9 17:-24 23:-10 29:-19 31:-8 32:-11 37:31 38:-8 40:22 43:16 64:-8 65:23 69:8 83:25 84:-10 99:15 100:18 114:26 115:9 122:15 125:-31
spar	8:11 21:17 39:19 65:9
to spar	8:19 39:15
spar $	8:25
free==	1:-29 3:-9 11:-14 13:-22 15:-12 16:-10 17:-16 23:21 25:25 26:-22 28:-22 29:117 30:9 33:-8 36:-8 38:67 40:-18 43:-10 48:-9 60:12 65:155 77:13 83:-17 84:123 91:-9 93:-9 99:-11 101:-9 102:-12 106:71 109:15 110:14 111:-15 113:-15 125:-14
free	1:-29 3:-9 11:-14 13:-22 15:-12 16:-10 17:-16 23:21 25:25 26:-22 28:-22 29:117 30:9 33:-8 36:-8 38:67 40:-18 43:-10 48:-9 60:12 65:155 77:13 83:-17 84:123 91:-9 93:-9 99:-11 101:-9 102:-12 106:71 109:15 110:14 111:-15 113:-15 125:-14
is free	8:8 15:-8 25:8 29:16 65:84 77:17 113:-11 125:-12
free $	1:-10 13:-14 23:89 25:48 29:-17 38:-11 65:52 77:17 109:-8 110:23 113:-9 125:-18
show tin	8:33
what @wire	23:25
what the	2:12 75:8 83:22 88:10
supply==	8:-13 9:153 14:26 25:-9 35:-8 50:15 120:12 121:25 122:21
supply	8:-13 9:150 14:25 25:-9 32:21 35:-8 50:15 120:12 121:25 122:21 125:-8
^ supply	9:82
supply $	9:85 32:32 50:21 121:-9
supply the	14:34 32:15
buy==	0:8 5:-9 8:-13 9:17 10:113 11:-22 22:-10 29:-16 32:39 120:18 122:20 125:-14
soon==	9:39 10:-10 51:12 83:15
^ should	9:43 22:61 40:-21 118:-9 125:11
buy	0:8 5:-9 8:-13 9:17 10:113 11:-22 22:-10 29:-16 32:39 120:18 122:20 125:-14
to buy	9:27 10:51 11:-18 29:-13 32:12 120:8 125:-9
buy wire	9:11 10:-18 120:21 122:14
soon	9:39 10:-10 51:12 83:15
i buy	10:37 32:14
order==	0:-18 1:12 6:-12 8:-34 9:84 10:107 11:-28 12:-14 13:9 14:-14 15:23 16:-8 17:-15 19:-19 20:-10 21:-8 22:-14 23:-13 24:-9 25:-14 26:-16 27:13 28:-16 29:-34 30:-16 31:46 32:18 33:-18 35:-17 38:-10 39:-15 40:-11 42:-8 44:-10 47:-13 49:-10 50:-8 51:49 52:-8 53:-10 54:-8 55:-16 57:-10 58:-8 60:-11 66:-21 67:-9 87:-11 88:-14 98:-8 99:-11 100:-18 101:10 103:-8 106:-16 108:-9 112:-9 116:42 117:176 118:155 119:171 120:78 121:12 122:44
order	0:-22 2:-8 4:-10 5:8 6:-23 7:-11 8:-56 9:67 10:202 11:-50 12:-9 14:-23 15:21 16:-13 17:-19 18:-12 19:-34 20:-20 21:-12 22:-25 23:-21 24:-13 25:-19 26:-19 27:8 28:-24 29:-61 30:-21 31:272 32:36 33:-27 35:-27 36:-9 38:-14 39:-21 40:-13 42:-9 43:-11 44:-11 47:-18 48:-8 49:-12 50:-30 51:41 52:-9 53:-14 54:-12 55:-19 57:-13 58:-11 60:-12 65:-8 66:-40 67:-17 68:-11 69:-10 79:-11 81:-11 86:-9 87:-12 88:-18 89:-8 91:-8 97:-8 98:-11 99:-13 100:-22 101:8 103:-10 104:-8 105:-8 106:-18 108:-12 110:-12 111:-8 112:-15 116:224 117:155 118:150 119:202 120:72 121:9 122:34 124:-9 125:-18
we order	5:-8 8:-9 10:-11 31:24 32:33 117:-9 118:-10 119:47 120:46 122:-18
order wire	9:10 10:-9 116:16
shall==	9:20 10:10 11:-8 28:-8 29:33 33:-8 43:-10 53:13 54:-12 55:-8 57:20 58:12 60:13 61:23 65:17 99:11 101:-9 104:21 107:-20 111:21 113:11 114:21 115:24 125:-11
shall	9:20 10:10 11:-8 28:-8 29:33 33:-8 43:-10 53:13 54:-12 55:-8 57:20 58:12 60:13 61:23 65:17 99:11 101:-9 104:21 107:-20 111:21 113:11 114:21 115:24 125:-11
)~",
R"~(^ shall	9:11 10:-9 29:42 107:-15
have to	0:12 2:11 4:15 8:-20 9:44 10:41 11:61 16:-11 18:8 24:13 26:-8 27:9 29:-18 30:18 31:-15 33:-8 38:33 51:11 65:-8 81:10 114:17 121:12 125:-22
to order	9:50 10:81 31:-18 32:-12 125:-14
now==	0:-16 1:-16 2:-18 3:-23 4:-21 5:-19 6:-11 7:-8 8:-22 9:11 10:10 11:-21 12:-13 13:-18 14:-23 15:-14 16:-13 17:45 18:-11 19:-9 20:-10 22:-15 23:-14 25:31 26:-22 27:-15 29:38 30:-18 31:-22 32:-17 33:-26 35:-17 37:21 38:15 39:19 40:-12 41:-31 42:20 43:-9 45:-13 47:30 48:-9 51:-8 52:50 53:-13 54:-20 55:47 57:31 58:24 60:13 61:87 62:-25 63:-14 64:16 65:52 67:14 68:-9 69:-11 70:-14 72:-10 73:-8 75:66 76:-8 78:16 80:15 81:-9 83:-15 85:8 86:-9 87:14 88:-10 89:-13 90:-9 91:-23 92:-15 93:-10 95:-12 96:20 97:-12 99:72 100:-11 101:-18 102:-13 103:59 104:17 105:-9 107:70 108:22 109:16 110:-22 113:-17 115:-9 116:-11 117:-25 118:90 119:-21 120:42 121:86 122:-17 125:-61
now	0:-16 1:-16 2:-18 3:-23 4:-21 5:-19 6:-11 7:-8 8:-22 9:11 10:10 11:-21 12:-13 13:-18 14:-23 15:-14 16:-13 17:45 18:-11 19:-9 20:-10 22:-15 23:-14 25:31 26:-22 27:-15 29:38 30:-18 31:-22 32:-17 33:-26 35:-17 37:21 38:15 39:19 40:-12 41:-31 42:20 43:-9 45:-13 47:30 48:-9 51:-8 52:50 53:-13 54:-20 55:47 57:31 58:24 60:13 61:87 62:-25 63:-14 64:16 65:52 67:14 68:-9 69:-11 70:-14 72:-10 73:-8 75:66 76:-8 78:16 80:15 81:-9 83:-15 85:8 86:-9 87:14 88:-10 89:-13 90:-9 91:-23 92:-15 93:-10 95:-12 96:20 97:-12 99:72 100:-11 101:-18 102:-13 103:59 104:17 105:-9 107:70 108:22 109:16 110:-22 113:-17 115:-9 116:-11 117:-25 118:90 119:-21 120:42 121:86 122:-17 125:-61
wire now	9:13 10:-9
now $	0:-8 1:-10 3:-12 5:-12 8:-13 9:21 10:24 11:-22 13:-9 14:-17 15:-9 17:35 22:-11 23:-13 25:35 26:-14 29:65 30:-13 31:-15 32:-15 33:-17 35:-25 36:-11 37:28 38:22 39:9 41:-14 57:17 58:-10 60:11 61:61 62:-13 63:-13 65:70 72:8 75:39 83:-9 84:-8 85:14 87:8 91:-16 94:-14 96:8 98:-14 99:50 102:-8 103:44 104:28 106:8 107:9 109:-13 110:-13 111:19 113:-12 117:-16 118:69 119:-13 120:26 121:23 122:-16 125:-45
order anyth	9:36 10:-15 122:-14 125:14
shall i	9:13 29:40 107:-15
buy any	9:8
any wire	8:-12 9:44 23:8
we buy	10:34 32:18
any the	31:23
@wire now	9:33 39:10 118:-11
some==	0:12 2:8 5:-11 7:9 29:9 66:-11 69:18 79:18 94:16 115:-19 125:45
some	0:11 2:8 5:-11 7:9 29:9 66:-11 69:18 79:18 90:9 94:16 115:-19 125:45
more==	0:-10 1:-22 2:-9 3:-9 5:-8 8:-34 9:43 11:-13 13:-16 15:-8 16:15 17:-14 23:-12 24:-13 25:-8 26:-11 28:-24 29:-10 30:41 31:-14 32:-12 33:-8 36:-14 38:35 42:15 43:-11 44:-11 45:-10 47:18 50:59 52:36 53:-32 57:54 60:14 62:20 63:23 64:-9 65:13 69:12 70:-14 71:8 84:27 86:25 87:15 89:-13 90:-9 91:-14 93:73 95:-11 99:-20 100:31 101:-20 102:45 104:-16 108:-12 109:24 110:-17 113:9 114:11 122:59 124:-11
more	0:-10 1:-22 2:-9 3:-9 5:-8 8:-34 9:43 11:-13 13:-16 15:-8 16:15 17:-14 23:-12 24:-13 25:-8 26:-11 28:-24 29:-10 30:41 31:-14 32:-12 33:-8 36:-14 38:35 42:15 43:-11 44:-11 45:-10 47:18 50:59 52:36 53:-32 57:54 60:14 62:20 63:23 64:-9 65:13 69:12 70:-14 71:8 84:27 86:25 87:15 89:-13 90:-9 91:-14 93:73 95:-11 99:-20 100:31 101:-20 102:45 104:-16 108:-12 109:24 110:-17 113:9 114:11 122:59 124:-11
more the	107:14 111:17
order any	31:26
enough $	9:9 68:16 86:-9 91:19 125:35
@wire left	8:55 66:23
left for	62:16
open job	8:-9 9:47 12:-22 14:61
shop==	8:11 11:-15 12:-15 14:41 20:-9 23:24 25:29 26:-12 27:-8 28:24 29:-23 31:-10 33:-10 35:-14 48:27 52:10 53:64 54:50 55:38 61:-11 62:52 63:23 84:9 100:-8 101:-9 108:-8 109:51 110:-9 111:-14 112:44 120:9 122:9 125:-21
shop	6:-15 9:34 10:53 11:-16 12:-17 14:39 19:-8 20:-12 22:-8 23:16 25:28 26:-14 27:-9 28:23 29:-25 31:-13 33:-11 35:-26 48:27 52:10 53:63 54:50 55:37 61:-11 62:52 63:23 83:-8 84:8 98:-8 100:-9 101:-10 108:-9 109:51 110:-10 111:-14 112:44 120:8 122:8 125:-22
the shop	8:8 10:31 11:-14 12:-15 14:29 23:24 25:30 26:-12 27:-8 28:41 29:-22 31:-10 32:-15 33:-8 35:-24 52:12 53:59 54:45 55:40 57:8 61:-9 62:32 63:39 84:9 100:-8 101:-9 109:22 110:-8 112:24 122:10 125:-18
short on	9:11 42:30
on any	26:10
run==ning	8:-8 9:89 11:8 12:-8 17:-9 25:17 102:15
is we	9:9
run	8:-15 9:161 10:17 12:-9 17:-11 22:-10 25:15 28:-9 31:-9 102:46 104:17 112:11 119:18 125:-8
we run	9:10 29:9
run short	9:19
short of	8:-13 9:38 51:25
of wire	0:11 19:22 24:13 31:9 43:40 49:33 80:-8 125:-10
shop run	54:8 112:13
of anyth	84:-11 125:19
anyth $	0:13 9:51 10:-13 11:34 22:31 26:10 40:13 87:8 114:16 125:-25
low==	0:-9 2:-8 3:-9 8:-11 9:98 11:-9 13:-12 16:-12 17:88 29:-9 41:-37 42:-14 45:-8 50:-9 51:88 69:-9 76:-8 78:-11 80:-9 89:38 92:191 97:-8 125:-14
low	0:-10 2:-8 3:-10 8:-11 9:98 11:-10 13:-16 16:-14 17:129 23:-8 29:-10 33:-8 41:-37 42:-14 45:-9 50:-9 51:88 69:-9 76:-8 77:-8 78:-11 80:-9 89:37 92:189 95:-8 97:-8 125:-14
run low	9:65 17:-8
low of	17:20
low on	9:27 17:16 92:12
on anyth	9:23
are we	1:-9 8:47 9:14 11:21 12:-10 13:58 16:-11 19:-14 22:-8 23:14 25:-13 27:14 28:109 29:26 31:40 32:-14 52:-10 53:-26 54:-16 107:-13 108:-11 112:-15
we short	8:-14 9:40
on @wire	88:21
wire is	8:16 21:-8 23:22 88:36 91:30 120:14
is short	42:15
short $	0:-10 9:22 35:9 40:21 42:29 79:9 86:19 125:11
is run	9:43
what are	5:-11 8:-14 11:21 12:-14 14:32 17:-17 23:51 25:-8 26:15 27:45 28:77 29:-15 31:-11 32:27 33:-13 35:17 52:-8 109:-13
are run	25:13
wire are	9:40 17:-9 22:16 51:-8 88:10
are short	9:9
low $	9:64 17:15 41:-17 92:84
out==	0:10 1:-10 3:-24 4:-11 5:39 6:-12 7:-10 8:25 9:23 11:11 12:-15 13:-15 14:8 15:-12 16:-20 17:-12 18:-12 19:-17 20:62 21:-14 22:58 23:-15 25:11 26:-13 27:9 29:-15 30:-10 31:-15 32:-21 33:-26 36:18 37:-10 39:-15 40:62 41:-39 42:41 44:-14 47:21 48:43 50:-10 53:-10 55:-14 60:-8 62:12 63:19 66:-16 67:-10 68:-9 69:-9 70:58 71:16 72:69 73:32 75:-22 77:-19 78:-25 79:-19 81:53 82:13 83:-8 86:29 87:35 89:-17 90:-10 91:20 92:-11 93:-9 94:-11 95:24 96:-10 97:-8 99:-11 100:-8 101:80 102:13 105:-13 106:-8 107:-13 108:20 111:-9 113:-11 115:-11 117:-9 118:-16 119:9 120:-11 122:44 124:-9 125:-12
is @wire	1:71 8:-18 9:-16 18:16 23:-8 31:69
@wire run	9:45
out	0:10 1:-10 3:-24 4:-11 5:38 6:-12 7:-12 8:24 9:19 11:11 12:-15 13:-15 14:8 15:-12 16:-20 17:-12 18:-12 19:-18 20:79 21:-18 22:57 23:-16 25:11 26:-13 27:9 29:-15 30:-10 31:-15 32:-21 33:-26 36:18 37:-10 39:-15 40:62 41:-39 42:41 44:-14 47:21 48:43 50:-10 53:-10 55:-14 60:-8 62:12 63:19 66:-16 67:-10 68:-9 69:-9 70:58 71:16 72:69 73:32 75:-22 77:-19 78:-25 79:-19 81:52 82:13 83:-8 86:29 87:35 89:-17 90:-10 91:20 92:-11 93:-9 94:-11 95:24 96:-10 97:-8 99:-11 100:-8 101:80 102:13 105:-13 106:-8 107:-13 108:20 111:-9 113:-11 115:-11 117:-9 118:-16 119:8 120:-11 122:44 124:-9 125:-12
run out	9:61 119:19
out $	8:-10 9:22 11:19 20:14 22:35 25:14 29:-10 30:9 40:47 43:9 48:24 52:9 65:-10 75:-8 78:13 81:-16 82:33 91:19 107:-8 119:18 122:11 125:-11
@wire low	9:29 51:28
the wire	3:-8 5:-9 6:-8 8:11 9:62 11:-17 16:-18 17:-11 18:78 19:-9 20:41 21:-9 23:-14 27:13 28:-11 29:-12 33:-10 43:16 49:8 50:9 66:10 73:35 74:-8 88:-9 107:24 118:14 120:17 125:-15
wire run	9:18
wire==s	8:50 9:56 10:15 17:-14 19:9 23:-9 31:13 51:-8
refret==s	8:-61 9:108
refret	8:-63 9:102 27:76 29:-26 30:136 35:-9
many refret	8:-45 9:68
refret left	8:-14 9:22
left on	8:-8 27:24 29:8
refret are	8:-11 9:22
are left	8:13 50:-9 66:12
are are	89:12
left in	8:9
still==	0:-23 1:14 3:-10 4:-17 5:-17 6:-13 8:10 9:18 11:-16 12:21 13:82 15:-8 16:12 19:-10 23:36 27:33 29:-14 31:48 33:-13 41:-14 43:-10 45:76 87:38 89:52 91:-8 97:-10 124:-10
still	0:-23 1:14 3:-10 4:-17 5:-17 6:-13 8:10 9:18 11:-16 12:21 13:82 15:-8 16:12 19:-10 23:36 27:33 29:-14 31:48 33:-13 41:-14 43:-10 45:76 87:38 89:52 91:-8 97:-10 124:-10
we still	19:-8 23:-8 31:36
still have	13:23 125:27
have in	8:8
we do	5:12 17:28 38:14 53:33 57:28 86:29 100:34 103:10 106:16 112:-11 122:19 125:-51
good $	1:-10 2:9 8:-24 9:40 18:42 40:44 45:25 62:14 63:14 86:23 100:11
last==	0:-11 3:-10 4:8 5:-11 8:-18 9:79 10:19 13:-12 14:-19 16:-10 17:-19 19:60 20:45 21:25 22:-13 23:-10 25:-8 27:-18 29:-17 31:-17 32:-20 33:36 35:-13 36:-8 41:-15 42:-10 43:-12 45:34 47:-10 53:11 62:29 66:-8 73:-10 77:-17 83:8 87:-8 89:19 91:-14 93:189 97:-14 107:-8 108:-11 110:12 112:-24 113:-8 114:-8 124:127
)~",
R"~(last	0:-12 3:-11 5:-11 8:-19 9:101 10:18 13:-12 14:-19 16:-11 17:-19 19:56 20:45 21:24 22:-13 23:-10 24:-8 25:-8 27:-10 29:-19 31:-22 32:-21 33:34 35:-14 36:-8 41:-15 42:-11 43:-12 45:34 47:-11 53:11 62:29 66:-8 73:-11 77:-18 83:8 87:-8 89:19 91:-14 93:188 97:-14 98:11 107:-8 108:-12 110:12 112:-24 113:-8 114:-8 124:127
@wire last	9:40 21:14 31:-12
last $	9:74 27:-11 31:-12 33:18 93:69
run==s	9:17 102:31 104:18 112:12
first==	9:18 13:-12 29:16 64:-9 113:80 114:42
what run	9:17
first	9:18 13:-12 29:16 64:-9 113:80 114:42
first $	9:18 29:16 113:99 114:-15
which wire	9:15 10:58 17:-10 51:-8
out first	9:15
when==	0:-9 1:-13 5:-8 8:-18 9:111 10:-11 11:123 12:-16 13:-30 14:-9 15:-11 16:-13 17:-16 18:-16 19:51 20:-15 21:-10 23:-19 24:-10 25:43 26:55 28:148 29:152 30:77 31:103 32:-15 33:32 37:-8 39:-13 43:-23 44:-10 45:-8 48:-18 50:-23 51:38 53:-8 54:-11 64:-19 65:-14 66:-13 79:-10 84:-10 87:-10 101:-13 102:-11 103:9 106:-9 107:-15 108:-12 110:-11 111:-8 113:-9 114:-8 115:-21 117:-9 119:-8 125:-17
run==	9:56 10:20 119:19
when	0:-9 1:-13 5:-8 8:-18 9:111 10:-11 11:123 12:-16 13:-30 14:-9 15:-11 16:-13 17:-16 18:-16 19:51 20:-15 21:-10 23:-19 24:-10 25:43 26:55 28:148 29:152 30:77 31:103 32:-15 33:32 37:-8 39:-13 43:-23 44:-10 45:-8 48:-18 50:-23 51:38 53:-8 54:-11 64:-19 65:-14 66:-13 79:-10 84:-10 87:-10 101:-13 102:-11 103:9 106:-9 107:-15 108:-12 110:-11 111:-8 113:-9 114:-8 115:-21 117:-9 119:-8 125:-17
^ when	4:9 6:-9 9:11 11:67 12:-8 13:-19 18:-8 19:45 23:-9 25:69 26:63 28:59 29:61 30:46 31:96 43:-20 45:-13 50:-20 64:-17 65:-10 66:-9 84:-8 107:-12 114:-19 115:-18
when do	9:11 11:29 26:71 28:34 29:-32 31:39 50:-19 66:-8 115:-13 125:-11
do the	5:-8 8:-12 9:29 10:9 12:-8 20:17 24:13 31:42 32:-10 50:-19 64:80 66:-8 103:20 113:11 114:11 125:-26
used==	1:-13 3:-13 4:-9 9:20 13:-8 16:-8 22:25 23:-9 29:-10 33:30 35:31 36:78 37:-23 38:-8 71:16 81:-10 82:71 84:9 101:19 102:12 125:49
up==	1:-11 3:-15 8:-18 11:50 12:-15 13:28 15:-10 16:-18 17:-8 18:-12 19:-11 20:59 21:-18 22:25 23:-20 24:78 25:-19 26:-9 27:-15 28:-17 30:-9 32:-9 33:-25 35:-13 36:8 37:-19 38:10 39:-9 40:-8 41:-25 42:37 43:-27 45:57 47:-11 48:11 52:11 53:9 54:17 55:-14 59:8 60:-13 61:-8 63:-9 64:-18 65:75 68:-10 69:10 70:58 73:-9 77:-25 78:-10 84:-11 87:-13 89:33 90:-11 91:59 92:-11 93:18 95:-11 97:-10 99:66 100:-17 101:-22 102:87 103:-10 104:-31 105:-15 106:59 107:31 108:-14 110:-13 111:-18 113:-11 114:-9 115:-14 118:-9 125:-13
when doe	11:18 25:31 28:27 29:-11 31:31
doe @wire	9:52 18:22 24:17 27:-9 31:-13
@wire be	5:18
used	1:-13 3:-13 4:-9 9:20 13:-8 16:-8 22:25 23:-9 29:-10 33:30 35:31 36:78 37:-23 38:-8 71:16 81:-10 82:71 84:9 101:19 102:12 125:49
be used	84:11 101:20 102:12
up	1:-11 3:-15 8:-18 11:50 12:-15 13:28 15:-10 16:-18 17:-8 18:-12 19:-11 20:59 21:-18 22:25 23:-20 24:78 25:-19 26:-9 27:-15 28:-17 30:-9 32:-9 33:-25 35:-13 36:8 37:-19 38:10 39:-9 40:-8 41:-25 42:37 43:-27 45:57 47:-11 48:11 52:11 53:9 54:17 55:-14 59:8 60:-13 61:-8 63:-9 64:-18 65:75 68:-10 69:10 70:58 73:-9 77:-25 78:-10 84:-11 87:-13 89:33 90:-11 91:59 92:-11 93:18 95:-11 97:-10 99:66 100:-17 101:-22 102:87 103:-10 104:-31 105:-15 106:59 107:31 108:-14 110:-13 111:-18 113:-11 114:-9 115:-14 118:-9 125:-13
used up	9:22 82:10
up $	2:11 6:8 9:16 11:8 16:-11 17:13 23:-8 24:-11 25:-8 26:-8 29:59 31:-10 35:-8 43:-8 44:-15 45:37 77:-15 89:65 91:33 93:-19 99:26 101:-8 102:33 125:25
@wire end	9:10 39:8
end $	9:9 27:22 36:12 39:12 41:8 70:16 87:18 89:8
when will	29:49 30:13 31:17 125:-8
out of	0:-13 2:-26 3:-9 4:-8 5:63 8:38 9:-27 16:-12 17:-8 20:11 25:8 30:-9 33:-14 36:42 39:-14 40:-11 41:-9 42:-18 44:-8 47:-10 48:23 57:10 62:14 63:21 66:-8 70:69 71:23 72:49 73:37 78:-25 79:-9 80:9 81:24 82:-10 86:33 87:39 91:-11 94:-8 95:-19 101:57 102:19 107:-11 108:-8 110:-14 118:-8 122:15
long will	9:40
will @wire	18:29
do $	3:43 13:18 15:10 17:-9 29:10 32:-14 35:71 76:-8
reach==	9:19 42:20 87:20
long do	9:-10 27:31 32:19
reach	9:19 42:20 87:20
@wire reach	9:19
reach $	9:16
long doe	4:-15 27:64 32:39 35:-10
our==	0:47 5:17 8:31 9:8 10:-9 11:-9 14:-10 16:-12 17:-8 19:-8 23:-10 24:10 27:-11 31:10 32:19 33:-8 55:68 62:34 63:12 66:-8 86:13 88:9 99:8 101:-12 115:15 116:8 117:-10 118:22 119:16 125:-17
our	0:47 5:17 8:31 9:8 10:-9 11:-9 14:-10 16:-12 17:-8 19:-8 23:-10 24:10 27:-11 31:10 32:19 33:-8 55:68 62:34 63:12 66:-8 86:13 88:9 99:8 101:-12 115:15 116:8 117:-10 118:22 119:16 125:-17
our wire	8:50 9:-12
when should	9:22 11:12 31:-13
buy the	32:9
when must	9:15 11:29 29:15
i order	9:31 31:13 32:17 50:-11 116:18 118:-8 119:-9
when shall	9:12
day==	9:28 10:-15 11:24 12:-8 13:-19 14:-17 16:-8 17:-9 22:-12 23:-9 25:-12 27:-9 28:47 30:81 31:-11 32:-8 33:-8 35:-12 42:-8 47:50 48:-15 51:-8 52:-32 53:68 54:30 61:-13 62:26 64:-11 65:-9 79:9 81:8 86:-11 91:-9 99:-22 100:-16 101:26 102:-8 103:-9 108:51 110:51 111:42 112:72 125:35
^ by	9:22 10:-12 11:18 19:-9 21:12 26:12 29:11 31:-10 32:38 50:-9 67:29 125:-8
by what	9:10 10:-8 11:-10 38:-9 104:29
day	0:-22 1:-19 2:-9 4:-8 5:-14 6:-16 7:-11 8:-29 9:52 10:78 11:74 13:-14 14:-9 15:-9 16:-24 17:-21 18:-11 19:-9 20:-12 21:-8 22:80 23:-17 24:-8 25:-15 26:34 27:-14 28:78 29:18 30:75 31:-15 32:25 33:-17 35:-15 36:-14 38:-12 39:-13 40:-11 41:-12 42:-10 43:-10 44:-9 47:71 48:-17 50:-14 51:-13 52:-11 53:54 54:24 61:-15 62:24 63:-8 64:-15 65:-13 77:-11 83:-11 84:-9 86:-12 87:-10 89:-11 91:-14 93:-9 97:-12 98:-15 99:-31 100:-20 101:20 102:-12 104:-15 105:-17 106:-8 108:46 110:45 111:28 112:82 115:30 117:-15 118:12 120:37 121:55 124:-8 125:10
what day	9:10 10:-8 29:13 30:45
by when	9:11 11:30 29:12
order $	5:-9 8:-30 9:12 10:32 11:-8 12:-12 19:-9 27:21 29:-15 31:114 32:26 33:-8 35:-11 50:55 101:8 116:20 117:29 118:-14 119:15 125:-12
buy $	8:-8 9:-8 10:86 11:-9
get==	1:-11 2:18 5:12 7:10 8:-26 9:38 11:-14 19:42 20:-17 21:-12 28:-15 29:60 31:-9 32:58 33:12 45:13 46:-9 53:8 57:31 64:14 81:9 86:8 89:-19 90:8 93:9 105:11 107:-12 119:11
get	0:-25 2:16 5:38 7:10 8:-30 9:35 11:-10 13:10 14:-13 17:-9 19:40 20:-18 21:-13 23:-8 26:-8 27:-11 28:-21 29:45 31:-10 32:57 36:23 37:-13 45:12 46:-9 57:29 64:12 73:18 89:-20 101:19 105:12 106:-9 107:-13 114:-8 119:10 125:77
to get	9:9 12:8 29:10 64:24 99:12
get $	5:19 33:10
@wire should	8:11
how is	7:9 9:10 13:110 16:25 25:27 27:-13 29:-16 35:13 94:-15 125:-9
the supply	9:14
how are	8:39 9:-13
supply of	9:20
stand==s	11:22 13:9 16:23 17:19 25:12 29:-25 41:-19 78:-9 89:8 91:11 92:78 119:10
stand	2:-10 4:-8 11:19 13:37 14:25 16:19 17:84 25:35 29:-33 41:-28 77:-10 78:-9 84:-8 89:17 91:18 92:83 119:9 125:-10
wait==	2:-8 5:-8 6:-8 9:36 17:-9 23:-8 28:10 30:16 43:-11 47:-9 65:-12 107:-9 108:15 113:70 114:132 124:14 125:-29
what job	1:13 9:13 11:13 12:37 29:-14
wait	2:-9 4:-9 5:-9 6:-10 9:26 11:10 12:61 13:-14 15:-9 16:-9 17:-11 19:-11 23:-19 28:-12 29:-20 30:14 31:59 43:-16 47:-11 48:-9 51:11 65:-14 87:-11 91:-8 107:-11 108:12 113:64 114:199 118:18 124:13 125:-34
job wait	9:27
wait for	5:-8 6:-8 9:35 11:-15 12:-9 19:-9 23:-15 30:11 31:35 113:-10 114:89 118:20
job would	9:9
would wait	9:9
job are	29:39
short for	22:27 40:14
need of	6:9 100:-8 122:16
much do	24:28
take of	9:14
job take	9:9
use of	9:9
each==	0:-26 4:34 5:20 7:11 9:30 10:-9 13:-10 14:43 16:14 17:-13 29:14 32:-10 46:-13 50:49 52:30 54:-13 66:24 70:-22 79:-12 82:12 88:-8 97:8 99:13 104:-8 116:18 121:14
week==	8:-16 10:11 11:37 12:-8 14:-15 16:-11 17:-11 20:-10 23:-10 25:-28 26:45 27:-9 28:69 29:38 30:52 31:-8 32:-8 33:-9 35:-9 47:16 50:-21 52:8 53:42 54:28 61:-8 62:-8 63:-11 66:-21 100:-9 101:52 105:-8 106:-8 108:-11 109:33 110:48 111:-13 112:-13 118:45 125:33
each	0:-26 4:34 5:20 7:11 9:30 10:-9 13:-10 14:43 16:14 17:-13 29:14 32:-10 46:-13 50:49 52:30 54:-13 66:24 70:-22 79:-12 82:12 88:-8 97:8 99:13 104:-8 116:18 121:14
week	0:-14 1:-8 5:-8 7:-8 8:-19 9:14 10:26 11:101 12:-9 13:-8 14:-16 15:-9 16:-18 17:-17 19:-8 20:-12 21:-11 22:20 23:-16 25:-30 26:38 27:-15 28:77 29:89 30:47 31:-9 33:-13 35:-11 47:14 50:-24 53:40 54:24 61:-9 62:-9 66:-22 98:-10 99:-9 100:-11 101:49 102:-8 105:-10 106:-10 108:-12 109:32 110:46 111:-15 112:-14 117:-17 118:40 120:20 121:69 125:27
)~",
R"~(week $	8:-14 10:12 11:33 14:-9 16:-12 23:-9 25:-21 26:32 28:60 29:36 30:12 32:-8 33:-8 47:16 50:-26 52:25 53:22 66:-20 101:35 109:31 111:-10 112:-8 116:-8 117:-11 118:49 120:14 121:59 125:40
month==	8:-19 19:-10 20:61 21:42 33:19 46:-12 63:10
month	8:-19 19:-10 20:60 21:41 22:16 33:16 46:-12 63:10 84:10
a month	9:11
month $	8:-16 20:44 22:16 33:18
through==	0:15 3:-9 4:28 5:-8 8:-9 9:25 11:-8 12:-9 13:-12 16:-13 17:-14 20:16 23:-11 27:30 28:12 29:-21 33:43 39:-21 43:-8 44:32 50:-12 52:42 53:19 54:-9 66:9 71:32 75:-12 77:29 78:-8 80:13 81:20 89:-10 93:-8 94:-8 97:-8 105:-11 108:12 110:17 111:11 112:25 119:17 122:12 125:-16
per==	14:16 19:8 24:12 68:10
we go	107:8
through	0:15 3:-9 4:28 5:-8 8:-9 9:25 11:-8 12:-9 13:-12 16:-13 17:-14 20:16 23:-11 27:30 28:12 29:-21 33:43 39:-21 43:-8 44:32 50:-12 52:42 53:19 54:-9 66:9 71:32 75:-12 77:29 78:-8 80:13 81:20 89:-10 93:-8 94:-8 97:-8 105:-11 108:12 110:17 111:11 112:25 119:17 122:12 125:-16
go through	27:39 33:16
per	14:16 19:8 24:12 68:10
need a	0:20 4:-9 11:13 20:23 103:35 125:9
forecast==	8:-16 9:67
forecast	8:-16 9:67
stock forecast	8:-13 9:45
forecast of	8:-11 9:28
forecast for	9:20
forecast $	9:20
outlook==	9:14
outlook	9:14
the forecast	9:17
day==s	0:-17 1:-13 6:-11 8:-22 9:25 10:93 11:50 12:10 14:8 16:-16 17:-12 22:92 23:-9 26:38 28:30 29:16 32:33 33:-8 36:-11 41:-8 47:22 50:-13 52:22 53:-14 55:12 79:-12 83:-8 98:-11 99:-9 103:16 104:-9 105:-11 111:-13 112:10 113:-9 115:37 117:-12 118:8 120:43 121:61 125:-25
^ order	9:-10 10:20 31:-15 50:-33 51:36 66:-9 67:-8 116:130 117:23 118:83 119:40 125:-13
order list	10:89 31:-9
day #n	22:11 121:13
#n day	0:-16 1:-13 6:-11 10:88 11:39 14:9 16:-12 17:-8 22:82 23:-8 26:43 28:26 29:22 30:-11 32:37 36:-12 38:-8 41:-9 45:-10 47:35 50:-12 52:-10 64:-10 79:-8 86:-9 91:-8 98:-10 99:-22 101:-8 104:-9 105:-10 111:-9 113:-9 115:36 117:-11 118:10 120:46 121:26 125:56
#c	0:-27 1:-30 2:-17 3:-28 4:-20 5:29 6:-16 7:-15 8:-41 9:-30 11:-19 12:-11 13:-20 15:-9 16:66 17:-15 18:-16 19:-26 20:14 21:12 22:-21 23:-19 24:-17 25:-12 26:-20 27:-9 28:-14 29:-22 31:-26 32:-22 33:-21 35:-9 36:-14 37:-10 38:-15 40:-16 41:-16 43:-21 44:123 45:-29 46:15 48:-10 49:-15 50:80 51:33 53:20 54:-9 55:54 56:-21 57:-10 58:31 59:103 60:147 61:-17 62:-18 63:-17 64:-19 65:-17 66:28 67:106 68:68 69:25 70:-13 71:10 72:33 73:46 74:-10 75:-18 76:-17 77:-10 78:-13 79:17 80:-22 81:35 82:46 83:-10 84:-11 85:92 86:-24 87:50 88:-22 89:-13 90:-10 91:-9 92:-14 93:-10 94:-8 95:-13 96:-12 97:-14 98:-11 99:57 100:-16 101:23 103:-10 105:-22 106:-8 107:-23 108:-20 109:-11 110:-26 112:-13 113:8 114:-10 115:-12 116:35 117:35 120:28 121:62 122:-10 124:-8 125:-22
&#c	0:-24 1:-29 2:-13 3:-21 4:-13 5:29 6:-14 7:-15 8:-38 9:-26 11:-19 12:-11 13:-17 15:-9 16:63 17:-14 18:-14 19:-23 20:17 21:10 22:-21 23:-18 24:-15 25:-12 26:-19 27:-11 28:-14 29:-22 31:-26 32:-20 33:-21 35:-9 36:-13 37:-8 38:-15 39:10 40:-16 43:-21 44:120 45:-19 46:20 48:-10 50:43 51:36 53:21 54:-9 55:56 56:-9 57:-10 58:35 59:101 60:156 61:-17 62:-18 63:-16 64:-17 65:-17 66:30 67:81 68:79 69:34 70:-12 71:11 72:9 73:48 74:-10 75:-15 76:-16 77:-9 78:-11 79:18 80:-9 82:58 83:-10 84:-11 85:54 86:-22 87:34 88:-19 89:-12 90:-10 91:-9 92:-11 93:-9 95:-13 96:-10 97:-13 98:-9 99:53 100:-13 101:19 103:-9 105:-21 106:-13 107:-21 108:-19 109:-11 110:-25 112:-13 113:8 114:-9 115:-11 116:32 117:24 120:-8 121:47 122:-9 125:-21
&#c#n	16:11 44:48 46:-8 60:-8 69:22 73:25 75:-8 82:20 85:17 87:16 98:9 101:12 104:8 105:-8 113:10 117:9 121:-9 125:18
#c $	5:58 16:8 20:41 21:10 41:13 42:11 47:14 50:-12 55:10 58:36 59:10 60:42 73:41 87:24 107:-10 113:15 117:20 125:-10
order==s	5:16 6:-10 9:-13 10:27 11:-11 31:199 35:-8 117:-8 119:-10
of order	10:40 31:-21 101:28 117:9 118:41 119:8
make==	0:28 1:8 2:17 3:-15 7:14 10:9 17:-8 30:-8 33:-16 36:22 40:-9 42:-8 50:-8 54:-9 55:30 58:18 61:63 63:-9 69:27 78:51 81:-8 99:35 104:41 115:14 120:12 121:-10
^ make	3:-8 10:10 36:24 51:8 55:31 58:9 61:64 78:40 99:32 104:26 120:13 121:-9 125:-8
make me	0:9 10:10
me order	10:8
the list	6:19 10:25 12:-10 25:-11 31:-17 35:27 48:25 57:14 58:13 69:8 75:8 98:19 100:48 120:16 122:25
shop==ping	6:-10 8:-8 9:35 10:59 23:-8 35:-11 57:15
shop list	6:-10 8:-8 9:36 10:59 23:-8 35:-11
day $	0:-11 1:-9 6:-10 9:-10 10:22 11:19 12:12 16:-12 17:-10 22:43 26:35 28:37 29:18 30:18 32:37 46:8 47:16 50:-9 53:23 55:-8 64:-8 86:-10 98:-10 101:26 104:-8 105:-8 108:73 112:16 115:26 117:-11 118:26 120:37
the next	10:20 11:15 13:-11 16:-15 17:-11 26:25 27:21 28:16 29:15 31:49 36:60 44:45 75:-8 107:25 108:-8 125:-8
next #n	10:32 11:12 16:-17 17:-8 26:30 28:49 29:26 36:61 75:-8
#c day	120:-8 121:22
the order	0:-9 5:22 9:-12 10:33 13:16 15:27 26:-8 31:41 116:18 117:32 118:23 119:11 125:-8
buy now	10:18
order now	10:29 29:-8
today==	0:-12 9:-10 10:10 11:12 12:-17 14:-12 23:-10 29:94 30:-8 31:-8 32:-11 33:33 35:-16 44:-12 50:8 58:26 62:8 63:13 64:-11 75:-8 98:24 100:-8 103:-10 105:15 108:23 110:76 125:47
today	0:-14 8:-10 9:-18 11:31 12:-23 13:-8 14:-20 15:-10 16:-9 17:-11 19:-10 22:-11 23:-15 27:-12 28:15 29:81 30:14 31:-19 32:-16 33:52 34:9 35:-21 44:-13 47:34 52:-23 53:33 54:66 55:-12 57:-8 58:23 61:-10 63:11 64:-14 75:-10 91:-10 98:23 100:-11 101:12 102:-11 103:-13 105:30 106:31 107:-8 108:8 109:-11 110:78 111:45 117:-8 118:76 119:-9 121:-10 124:-8 125:8
today $	0:-12 9:-11 10:9 11:37 12:-12 14:-15 15:-9 22:-8 23:-11 25:-15 28:26 29:21 31:-13 32:-11 33:32 34:10 47:35 50:8 53:18 62:-25 63:16 64:-10 98:26 101:19 106:35 108:20 110:75 111:-9 118:36 125:-8
this week	10:16 11:41 25:-11 28:17 29:24 30:13 53:21 110:32 125:-10
order==ed	8:-15 10:45 11:-10 19:-10 22:-8 29:-19 31:30 32:23 50:-19 66:-18 67:-8 116:189 117:-13 119:41 125:-13
to be	0:11 1:-24 4:14 5:21 9:20 10:39 11:35 13:-41 15:10 18:-11 22:18 23:-20 25:-9 27:10 28:-10 29:11 30:-10 32:-15 36:-9 37:44 40:17 43:-15 44:-11 47:16 48:25 51:26 55:-11 64:-10 65:11 66:-13 69:14 72:-13 74:8 81:25 83:37 84:-14 86:17 99:13 100:16 110:-12 114:21 122:29 125:-29
be order	10:68 11:-8 29:-22 31:-22 32:36
has==	0:-39 1:-10 3:-16 4:-16 5:10 6:-13 7:-8 8:-12 9:-24 10:12 11:-15 12:11 13:-32 14:20 15:49 16:-28 17:-14 18:-16 19:-15 20:-18 21:19 22:49 23:55 24:-12 25:9 26:71 28:-30 29:-9 30:19 31:49 32:-22 33:41 35:-12 36:-12 38:-16 39:-8 40:12 43:20 44:-20 45:9 46:-8 47:52 48:11 49:-11 53:-9 55:-9 61:-24 64:-39 65:47 69:-9 72:-8 73:-8 74:23 75:16 77:9 78:26 80:19 81:-9 82:-19 84:-13 87:18 88:17 89:-18 90:11 91:-17 93:-8 94:54 95:-12 96:-9 97:-12 98:-12 99:31 100:-18 101:-12 102:-9 105:40 107:40 108:11 109:9 111:-23 113:31 114:-15 115:-15 117:21
has	0:-39 1:-10 3:-16 4:-16 5:10 6:-13 7:-8 8:-12 9:-24 10:12 11:-15 12:11 13:-32 14:20 15:49 16:-28 17:-14 18:-16 19:-15 20:-18 21:19 22:49 23:55 24:-12 25:9 26:71 28:-30 29:-9 30:19 31:49 32:-22 33:41 35:-12 36:-12 38:-16 39:-8 40:12 43:20 44:-20 45:9 46:-8 47:52 48:11 49:-11 53:-9 55:-9 61:-24 64:-39 65:47 69:-9 72:-8 73:-8 74:23 75:16 77:9 78:26 80:19 81:-9 82:-19 84:-13 87:18 88:17 89:-18 90:11 91:-17 93:-8 94:54 95:-12 96:-9 97:-12 98:-12 99:31 100:-18 101:-12 102:-9 105:40 107:40 108:11 109:9 111:-23 113:31 114:-15 115:-15 117:21
what has	5:22 10:17 21:15 22:26 27:-9 29:-26 30:22 33:31
has to	5:24 10:18 27:23 29:-25 30:18 47:40 86:10 114:16
order today	10:11
order with	31:15 116:11 117:-12 119:14
with in	10:9
buy in	0:9 10:8
buy with	10:8
order in	5:8 10:20 117:10
in #n	1:-9 7:12 10:55 11:-25 18:34 22:-13 30:8 36:-17 41:-11 46:11 47:53 49:8 63:12 70:8 75:41 77:22 81:-10 82:11 89:-13 91:-8 96:-10 97:-9 99:-12 104:36 115:25 118:19 120:11 121:-11
wire shall	10:19
wire should	9:-14 10:32
due==	9:-9 10:39 11:219 12:30 13:-11 22:-11 25:-8 26:-11 28:-17 29:-34 31:15 33:-8 39:-9 45:-9 46:11 47:152 50:-16 52:-18 54:-11 55:60 65:-8 87:-10 112:-9 113:-9 115:-13 116:49 118:15 125:-18
due	9:-9 10:39 11:219 12:30 13:-11 22:-11 25:-8 26:-11 28:-17 29:-34 31:15 33:-8 39:-9 45:-9 46:11 47:152 50:-16 52:-18 54:-11 55:60 65:-8 87:-10 112:-9 113:-9 115:-13 116:49 118:15 125:-18
^ due	11:98 47:-24
last #r	110:14
day #r	112:12
last the	9:-12 19:26 27:8
day the	11:8 110:9
&#n#o#r@job	45:8 89:8 93:12
)~",
R"~(part==	26:8 88:9 110:15 112:-17
#n last	11:9 93:12
part	26:8 60:10 88:9 110:15 112:-17
morn	3:-16 11:32 12:-9 13:-14 17:-9 25:-17 26:49 28:-19 29:27 33:-14 41:10 43:39 44:9 45:8 47:-8 50:9 53:30 54:10 62:-8 74:10 75:-17 77:18 84:-8 91:-9 95:31 96:10 97:19 99:-8 100:-10 101:54 102:-13 105:57 106:-13 107:25 108:10 110:28 111:26 112:-14 115:62 117:19 125:-30
morn job	77:23
@job day	11:8
#r day	101:-8 111:11
day today	52:-10 112:-9
tomorrow	1:-11 2:-8 4:-9 5:-8 6:-8 8:-14 9:-16 11:44 12:-11 13:-15 14:-36 15:-15 16:-20 17:-11 22:-8 23:-15 25:-25 26:67 27:-8 28:80 29:50 31:-16 32:-11 33:16 35:-13 36:-9 37:-8 45:-16 47:44 51:-10 52:-20 53:82 54:48 55:-15 61:-10 62:-10 63:-9 64:-8 65:-11 83:-12 87:-9 89:-13 91:-12 93:-10 99:-16 100:-15 101:40 103:-8 105:54 106:24 107:-14 108:-16 109:-18 110:42 111:59 112:57 113:-10 115:63 118:102 119:-13 121:-9 122:-8 124:-9
tomorrow job	11:8
day tomorrow	54:11
day #o	111:10
december	0:-18 1:-9 4:-8 11:32 12:-13 13:-14 16:-14 17:-10 23:-11 26:22 27:-8 28:70 29:31 30:88 33:-9 38:-11 40:-8 43:-8 44:-10 45:-18 47:58 50:-14 52:-21 53:90 54:39 55:-9 61:-12 63:-9 64:-11 65:-8 75:-13 77:-8 89:-16 90:-10 91:-9 95:-10 97:-13 99:-11 101:18 105:17 107:-10 108:-10 109:-17 110:82 111:33 112:96 115:8 116:10 118:69 119:-11
of december	0:-10 11:24 12:-10 26:26 28:15 29:21 30:46 45:-9 47:67 53:13 54:22 97:-9 105:9 110:10 111:23 115:13 118:33 125:-12
even	0:30 1:17 20:10 26:24 29:9 53:16 54:13 66:13 110:36 125:-16
@day	0:-15 1:-27 2:-16 3:-13 4:-15 5:-16 6:-13 7:-9 8:-22 9:-20 10:-15 11:69 12:-17 13:-26 14:-18 15:-24 16:-36 17:-26 18:-11 19:-13 22:-12 23:-22 24:-16 25:-23 26:55 27:-20 28:41 29:70 30:46 31:-22 32:-16 33:44 34:26 35:-14 36:-13 37:-12 38:-15 41:-9 42:-11 43:-19 44:9 45:-12 46:-12 47:73 48:-15 51:-9 52:204 53:73 54:33 55:-21 57:-10 58:-12 59:-12 60:-11 61:-22 62:-36 63:-30 64:-17 65:-25 66:-14 67:-8 69:-10 70:-14 71:10 72:-9 73:-12 75:-38 76:-9 77:-17 78:-9 82:-18 83:-11 84:-12 85:-8 86:-8 87:-18 89:-23 90:-9 91:-19 92:-8 93:-13 94:-26 95:8 96:14 98:-12 99:-22 100:-16 101:54 103:-15 104:-12 105:51 106:54 107:-9 108:-8 109:176 110:89 111:59 112:63 113:-22 114:-13 115:81 116:15 117:16 118:100 119:-16 120:-11 121:-14 122:-9 124:-11 125:8
next @day	16:-8 20:23 26:45 29:-28 47:34 50:-9 52:-52 53:35 54:52 105:33 106:38 109:-37 111:49 112:39 115:24 116:16 117:13 118:27 125:-63
@job last	48:10
&@day	0:-14 1:-26 2:-15 3:-12 4:-15 5:-15 6:-12 7:-9 8:-21 9:-18 10:-14 11:27 12:-15 13:-25 14:-17 15:-23 16:-35 17:-25 18:-11 19:-13 20:15 22:-11 23:-22 24:-15 25:-22 26:58 27:-18 28:40 29:39 30:50 31:-21 32:-14 33:56 34:18 35:-13 36:-12 37:-11 38:-14 41:-8 42:-8 43:-19 44:10 45:-10 46:-12 47:79 48:-14 51:-9 52:133 53:70 54:66 55:-20 57:-9 58:-11 59:-11 60:-10 61:-17 62:-33 63:-27 64:-15 65:-24 66:-13 67:-8 69:-9 70:-13 71:17 72:-8 73:-11 75:-26 76:-8 77:-16 78:-8 82:-17 83:-11 84:-12 87:-17 89:-22 90:-9 91:-17 92:-8 93:-13 94:-25 95:8 96:8 98:-11 99:-21 100:-15 101:44 103:-14 104:-11 105:62 106:56 107:-8 109:97 110:83 111:85 112:84 113:-21 114:-12 115:88 116:14 117:17 118:107 119:-16 120:-10 121:-13 122:-8 124:-10 125:19
due the	11:9 47:8
today day	54:8
afternoon	6:8 8:-9 11:29 26:30 28:-13 29:21 33:-13 40:19 43:21 46:-8 52:-15 53:36 54:18 70:-9 101:24 105:39 109:-13 110:73 111:-10 112:-17 125:-8
#n week	0:-10 10:15 11:66 22:22 28:11 29:37 32:8 63:11 117:-12 120:16 121:62
@job by	30:29 47:21 76:10
by the	0:20 4:-11 11:-9 30:53 41:26 50:-10 66:-14 67:25 76:15 79:42 87:14 89:-10 98:8 121:10 125:-15
due job	47:22
last @day	33:19 50:14
#n by	37:10 42:-10 69:11 75:-10 76:17 79:14 85:16 97:22
by #r	47:23
day @day	28:-24 52:19 101:-9 110:12
recheck	11:203 12:-9 13:-14 16:-10 17:-32 22:-8 26:-9 28:-12 29:-45 31:-8 33:-11 38:-12 43:-25 44:-9 45:245 47:-9 48:-8 55:89 75:-15 87:-11 89:-76 91:-8 93:-8 95:-10 97:-13 103:13 104:34 105:-14 108:-15 113:-10 114:-8 115:213 125:-19
fall==s	11:38 51:25 69:10 112:36 117:-8 119:17
fall	11:81 47:-10 51:24 69:10 112:35 116:-8 117:-8 119:17
fall due	11:56
due on	11:10 116:18 118:15
on #r	16:18 26:11 53:35 54:9 89:-9 106:18 110:32 111:-14 112:9 118:12 125:-12
is due	11:44 29:-20 47:27 55:14
due $	11:33 12:-12 31:20 47:38
tonight==	11:20 23:-20 26:23 105:43 110:55 125:-20
is anyth	11:47 23:13 26:28 83:-12
anyth is	11:12
to do	0:-9 3:9 10:-16 11:8 13:63 16:-10 26:-12 27:31 28:-10 29:56 30:12 35:-9 63:-8 103:10 124:8 125:-10
tonight	11:20 23:-20 26:23 105:43 110:55 125:-20
tonight $	11:20 23:-19 26:24 105:39 110:46 125:-20
for next	11:47 28:14 29:-19 110:10
@day $	1:-9 8:-9 11:25 12:-8 13:-8 14:-12 15:-16 16:-8 17:-9 20:13 23:-8 24:-8 25:-13 26:53 27:-8 28:138 29:59 30:31 31:-9 33:63 34:22 45:-11 47:45 50:-9 52:-15 53:24 54:-24 61:-12 62:-13 63:-10 65:-9 94:-20 105:-24 106:9 107:-10 108:-9 109:-13 110:60 111:-15 112:-44 113:-8 115:11 116:9 117:26 118:36 125:61
what fall	11:23
that is	3:-9 8:-14 13:-13 16:-12 23:26 31:-10 36:27 39:15 42:9 43:36 44:10 53:22 61:10 67:-8 70:9 71:10 75:-13 77:-9 83:12 84:31 89:-9 91:19 92:8 93:22 106:10 108:14 112:-15 119:8 125:-10
due in	10:47 11:24 46:10
in #r	82:22
on by	11:14
by next	47:17
com==ing	8:-34 9:-14 11:47 13:36 23:-10 25:-14 26:23 29:-18 31:90 48:17 62:11 63:-12 101:8 117:25 118:49 119:60 125:-26
com	8:-34 9:-14 11:47 13:36 23:-10 25:-14 26:23 29:-18 31:90 48:17 62:11 63:-12 101:8 117:25 118:49 119:60 125:-26
are com	11:33
com $	8:-29 31:81 117:23 119:41 125:-19
com up	11:31
is com	11:14 13:15 29:-18 31:33 117:18 118:54
com for	11:12
for tomorrow	29:41 101:-11
tomorrow $	8:-10 9:-9 11:15 14:-24 25:-15 26:14 28:80 29:36 31:-11 33:24 47:44 53:38 101:12 105:-10 106:37 108:-23 111:-9 112:29 117:-12 118:45 125:9
for @day	29:44 105:-15 109:-12 110:-14 115:23 118:18
com on	118:20
on today	11:10 28:-13 29:-11 47:9 53:21 54:12 105:18 106:17 111:8 112:31 125:-12
up on	11:44 17:-16 24:52 29:-19 45:18 70:14 91:15
on this	11:15 29:38 45:-14 115:31
this afternoon	11:8 29:29 101:10 110:30
afternoon $	26:30 28:-9 29:32 33:-9 40:20 43:22 53:17 101:13 105:-8 110:30
until==	0:-10 2:-8 4:-8 9:8 11:14 13:-8 16:-9 20:18 25:10 26:-15 27:-11 28:10 32:16 33:-15 37:14 43:-12 47:28 54:73 65:-16 71:9 81:10 100:-9 101:51 102:-11 106:-10 110:8 112:-10 113:-10 114:68 117:-10 118:32
show what	11:8 29:-10 33:19
until	0:-10 2:-8 4:-8 9:8 11:14 13:-8 16:-9 20:18 25:10 26:-15 27:-11 28:10 32:16 33:-15 37:14 43:-12 47:28 54:73 65:-16 71:9 81:10 100:-9 101:51 102:-11 106:-10 110:8 112:-10 113:-10 114:68 117:-10 118:32
on until	111:9
until the	5:8 32:8 101:11 110:18
me what	0:9 8:23 11:28 25:8 33:12 35:12 88:10 125:-13
due for	11:12
by @day	11:9 29:-12 30:63
ready==	11:10 12:-16 13:24 16:-8 17:-8 29:82 30:70 47:32 65:-8 99:9 106:12 108:13 125:33
job have	12:27
ready	11:10 12:-16 13:24 16:-8 17:-8 29:82 30:70 47:32 65:-8 99:9 106:12 108:13 125:33
be ready	11:22 12:-8 30:66 47:34 125:-29
ready $	11:17 12:-15 29:31 30:8 99:11 125:72
done==	0:-17 1:-15 2:-12 4:-16 8:-20 10:-18 12:19 13:49 14:-8 15:9 16:-37 17:-9 18:-12 19:-9 23:-15 24:-10 25:8 26:-14 27:34 28:-10 29:-23 30:14 31:-11 32:-12 33:81 35:-10 36:-13 37:-8 40:14 43:138 44:95 47:11 48:-11 55:8 62:10 65:-23 68:8 70:-8 71:20 72:16 73:8 74:-8 77:-8 83:-8 87:-14 89:-13 91:-12 95:16 97:-10 99:-8 100:34 101:-13 103:80 107:-29 108:48 113:-22 114:50 115:-10 125:24
befor==e	0:55 1:-10 5:-13 9:12 11:20 14:13 21:-9 25:11 31:8 32:-9 35:18 39:11 41:-8 43:13 44:10 45:-9 60:12 62:-10 63:10 64:-14 65:-8 72:-9 78:16 99:9 106:-8 107:-17 114:89 115:28 124:8 125:-26
must be	2:14 3:9 11:15 29:-10 30:-11 47:20 60:14 77:12 80:-10 98:20 120:19 122:10
done	0:-17 1:-15 2:-12 4:-16 8:-20 10:-18 12:19 13:47 14:-8 15:9 16:-37 17:-9 18:-12 19:-9 23:-15 24:-10 25:8 26:-14 27:34 28:-10 29:-23 30:14 31:-11 32:-12 33:81 35:-10 36:-13 37:-8 40:14 43:148 44:95 47:11 48:-11 55:8 62:10 65:-23 68:8 70:-8 71:20 72:16 73:8 74:-8 77:-9 83:-9 87:-14 89:-13 91:-13 95:16 97:-10 99:-8 100:34 101:-13 103:80 107:-29 108:48 113:-23 114:49 115:-10 125:24
be done	12:31 13:-25 27:43 29:26 47:8 55:22 64:13 125:-8
done on	13:39 25:24 27:24 29:-13 43:-11 103:15
befor	0:55 1:-10 5:-13 9:12 11:20 14:13 21:-9 25:11 31:8 32:-9 35:18 39:11 41:-8 43:13 44:10 45:-9 60:12 62:-10 63:10 64:-14 65:-8 72:-9 78:16 99:9 106:-8 107:-17 114:89 115:28 124:8 125:-26
)~",
R"~(on befor	11:17
befor the	6:8 9:19 114:28
done $	4:-9 11:-16 12:31 15:18 16:-9 17:-10 27:-9 29:18 30:23 43:34 48:-8 64:-10 65:-8 108:44 113:-12 114:36 125:46
job has	12:26 29:-9
by tomorrow	11:18 29:-10 47:21 125:41
done by	11:26 64:14
promis==ed	8:10 10:-14 11:138 13:-12 29:-21 30:-12 47:92 48:-10 50:-16 116:18 117:-15 118:78 125:-9
job is	11:8 13:-10 15:34 29:13
promis	0:-8 2:23 6:-8 9:-8 10:-16 11:126 16:-14 17:-16 26:-11 27:-9 28:-12 29:-25 30:112 33:-9 35:19 47:176 48:-11 50:-17 84:-8 105:-9 108:-11 116:17 117:-15 118:74 125:-18
is promis	47:37
promis for	11:50 23:-8 29:-13 30:16 47:49 50:-10 116:10 118:15
is out	11:12 28:21 87:8 101:12
out on	11:9 39:15 97:12
by #o	11:8
december $	0:-8 11:23 12:-9 13:-9 28:87 30:30 47:97 50:-11 53:-20 54:-37 97:-8 110:36 111:-16 112:9 116:9 118:64 119:-8 125:18
out in	28:8 91:10
going==	3:10 11:-26 12:-25 13:-10 25:9 27:-8 29:68 43:-9 54:11 58:11 61:10 65:21 83:22 97:11 107:24 108:25 125:19
going	3:10 11:-26 12:-25 13:-10 20:15 21:-10 25:9 27:-8 29:68 43:-9 54:11 58:11 61:10 65:21 83:22 97:11 107:24 108:25 125:19
is going	83:24
are out	42:-8 43:11 81:19
come==	0:-8 1:-17 2:-9 4:14 5:39 8:-18 9:-31 10:11 12:-11 13:-11 15:-8 19:24 21:-10 22:-12 23:-8 25:27 26:-8 27:-14 28:25 29:-22 31:84 32:18 33:23 42:-30 45:10 62:-15 63:38 65:-8 66:-11 68:13 73:-22 88:27 91:-8 95:10 98:8 109:-9 110:37 111:23 116:10 117:53 118:16 119:45
come	0:-8 1:-18 2:-20 4:11 5:30 8:-21 9:-38 11:-17 12:-12 13:9 15:-10 16:15 17:-21 18:-12 19:19 20:9 21:-11 22:-10 23:-22 24:-11 25:24 26:-12 27:10 28:16 30:-8 31:93 32:24 35:-8 38:-8 39:-8 41:15 42:-36 43:-9 44:-9 47:-8 48:-8 49:13 53:-8 55:-8 56:8 59:23 60:-8 61:-9 63:23 65:-10 67:10 68:11 69:-10 71:-9 77:-8 87:-8 88:21 89:-9 93:24 105:-8 107:-10 109:20 110:20 111:42 112:-11 113:20 114:28 115:-8 116:20 117:63 118:56 119:41 121:-9
fall==	11:23 47:-8
on tomorrow	28:-10 47:9 53:15 54:10 111:20 112:13 115:11 118:26 125:-20
are due	12:-14 55:33
on #o	28:-11 53:12 54:21 118:13
date==s	11:41 29:56 31:13 111:8 125:8
date	9:34 10:-9 11:55 12:22 16:-8 19:-9 27:-10 29:68 30:14 31:10 47:88 117:-10 118:28 125:41
due date	11:26 12:24 47:30
due day	47:24
day on	111:29
the week	2:9 28:12 29:15
the due	11:18 47:11
promise==s	11:10 29:13 53:17
promise	11:10 29:13 53:17
on tonight	11:9 105:12 110:21
day for	26:-10 28:15 30:8
for #r	16:13 27:-9 28:9 30:15 47:16 110:16
look==	0:27 1:-10 2:-11 8:25 11:48 13:45 16:-18 17:24 29:-20 39:-16 44:-9 45:54 58:50 61:29 81:12 89:30 90:-17 91:-8 95:-9 102:-8 107:-13 115:124 125:12
again==	0:-12 1:-16 2:20 4:-10 5:-11 8:9 9:-11 11:33 12:-10 13:-20 14:-8 16:25 17:-18 18:-9 23:-14 25:-13 26:-8 27:-9 28:-18 29:-22 30:-8 33:-20 35:-12 36:-18 37:-11 38:72 40:-12 41:-8 42:-12 43:-16 44:27 45:45 47:-14 48:9 50:-9 51:49 53:-12 54:-11 55:-10 61:-13 62:-8 63:103 64:-14 65:9 70:-9 72:19 78:65 82:-8 83:-15 84:16 86:15 87:-9 89:-23 90:-8 91:-17 93:-10 95:40 96:-8 97:-14 99:-16 100:-10 101:-32 102:146 104:52 105:-10 106:-12 107:20 108:-12 109:-11 110:-8 111:-12 112:46 113:17 114:-8 115:97 116:-10 117:-10 119:-8 124:8 125:-11
look	0:21 1:-16 2:-18 3:-8 4:-17 8:12 9:-8 11:57 13:80 14:-8 16:-22 17:20 18:-11 29:-24 33:-10 36:9 39:-17 43:-16 44:-12 45:100 47:-11 48:-9 58:72 61:47 63:-9 64:-11 65:-13 77:-8 81:11 87:-9 89:133 90:-20 91:-15 95:-13 97:-9 102:-11 108:-10 111:-9 113:-13 114:-11 115:108 125:25
i look	17:9 45:15 94:8
look at	8:16 11:69 29:-17 45:48 58:15 81:13 89:-9 107:-9 115:40
again	0:-12 1:-16 2:20 4:-10 5:-11 8:9 9:-11 11:33 12:-10 13:-20 14:-8 16:25 17:-18 18:-9 23:-14 25:-13 26:-8 27:-9 28:-18 29:-22 30:-8 33:-20 35:-12 36:-18 37:-11 38:72 40:-12 41:-8 42:-12 43:-16 44:27 45:45 47:-14 48:9 50:-9 51:49 53:-12 54:-11 55:-10 61:-13 62:-8 63:103 64:-14 65:9 70:-9 72:19 78:65 82:-8 83:-15 84:16 86:15 87:-9 89:-23 90:-8 91:-17 93:-10 95:40 96:-8 97:-14 99:-16 100:-10 101:-32 102:146 104:52 105:-10 106:-12 107:20 108:-12 109:-11 110:-8 111:-12 112:46 113:17 114:-8 115:97 116:-10 117:-10 119:-8 124:8 125:-11
at again	11:24
this even	26:12 53:13 110:8
even $	20:12 26:12 29:10 53:14 54:14 110:14
recheck==	11:68 13:-10 17:-12 28:-9 29:-16 43:-17 45:84 55:68 89:-39 97:-9 103:17 105:-13 107:-11 108:-10 115:212 125:-13
i recheck	11:37 17:-12 115:26
in today	28:12
we recheck	115:17
check==	0:-20 3:31 11:18 17:53 18:20 29:-16 35:-13 74:-8 114:13 115:52 125:20
check	0:-21 3:31 11:17 17:51 18:16 29:-17 35:-14 37:-8 41:13 74:-9 88:11 91:16 92:-8 94:8 110:26 114:13 115:51 125:14
i check	17:55 29:-14 35:-12 88:12
check again	11:17
again on	24:18 115:33
befor @day	11:22 118:9
again $	0:-8 1:-9 2:28 11:18 13:-8 16:13 17:-10 23:-15 28:-14 29:-13 33:-13 36:-9 37:-9 38:80 40:-10 43:-9 44:10 45:-11 47:-10 53:-10 54:-9 62:8 63:44 64:-10 65:15 72:18 77:10 78:34 83:-13 84:18 86:12 89:-13 91:-12 94:9 95:18 99:-9 101:-22 102:73 104:23 107:34 109:-9 112:50 113:23 115:23 124:11 125:-17
recheck $	11:14 45:10
in until	11:9
until @day	54:9 111:9 125:33
we look	11:34 115:9
what need	10:9 11:25 25:16 29:10
look==ed	11:11 45:61 115:-13 125:18
a look	61:10
a recheck	11:9 55:14 103:19
recheck for	11:23
next week	11:8 16:-10 17:-8 25:-11 26:30 28:36 29:-9 30:43 50:-24 53:23 66:-19 101:57 109:-9 110:38 118:16 125:55
recheck==ed	17:-18 45:149 75:-13 89:-22 115:11
want a	13:16 35:9 51:12 98:11
due befor	11:11
recheck are	55:33
recheck==s	11:144 29:-28 55:22 115:-9
which recheck	11:16
recheck is	11:-8 55:16
for #o	28:8
^ any	0:23 1:-9 8:-15 9:-11 11:53 17:55 22:20 23:41 30:22 31:21 37:-10 47:-12 92:-8
the recheck	11:34 29:-9 43:-10 45:79 55:31 89:-15 105:-11 115:36
wait==ing	9:-9 11:15 12:68 19:-8 23:-11 28:-22 29:-17 31:61 51:11 118:19
wait on	28:-16 29:-10 31:32 114:56 125:-16
on next	16:22 17:-12 28:8 29:-11 52:-17 54:18 112:16
which the	109:16
overdu==e	11:160 29:-9 31:13
overdu	11:160 29:-9 31:13
overdu $	11:64 31:15
past==	31:10 36:8 43:8 54:11 70:-8 93:46 107:16 111:15
are is	89:25
past	31:10 36:8 43:8 54:11 70:-8 93:46 107:16 111:15
^ overdu	11:69
behind==	11:30 29:9 69:17 77:9 114:48 125:-13
behind	11:30 29:9 69:17 77:9 114:48 125:-13
behind with	11:12
with anyth	11:48
am==	2:-12 6:8 9:26 13:-12 17:-13 23:19 29:35 30:-9 32:10 33:-13 36:-9 42:-21 43:37 51:15 52:16 60:10 64:15 65:18 79:8 82:-18 89:13 97:-8 107:73 108:64 110:34 111:36 113:14 122:-12 125:39
am	2:-12 6:8 9:26 13:-12 17:-13 23:19 29:35 30:-9 32:10 33:-13 36:-9 42:-21 43:37 51:15 52:16 60:10 64:15 65:18 79:8 82:-18 89:13 97:-8 107:73 108:64 110:34 111:36 113:14 122:-12 125:39
^ am	11:14 108:28
am i	11:10 17:9 23:25 27:10 29:52 107:-8 110:-12 125:-10
i behind	11:9
overdu with	11:12
with someth	11:10
someth $	11:10 26:13
press==	0:-9 1:-8 4:-11 5:-9 6:-13 7:-8 8:-11 9:-12 10:-8 11:66 12:-9 14:-15 15:-15 16:135 17:-24 21:-8 22:-9 23:-13 24:-15 25:69 26:69 27:-15 28:-37 29:39 30:-17 31:-13 32:-8 33:-30 37:-11 38:-8 43:-23 44:-59 45:-17 47:-11 48:-8 52:-12 53:-12 54:-8 55:64 57:-15 58:-8 63:-13 64:-8 65:-9 75:-18 77:-8 78:-8 83:-11 85:16 86:32 89:-10 91:-9 98:14 99:100 100:28 101:154 102:78 103:-8 104:-17 105:117 106:71 107:-16 108:-15 109:-14 110:-16 111:-17 112:-10 113:-9 114:-8 115:-12 117:-9 118:-13 119:-8 122:-10 124:-12 125:39
press	0:-18 1:-17 2:-29 3:-14 4:-21 5:-18 6:-21 7:-14 8:-23 9:-27 10:-17 11:91 12:-19 14:-37 15:-44 16:203 17:-47 18:-11 19:-13 20:-14 21:-14 22:-18 23:-32 25:203 26:78 28:-54 30:-28 31:-23 32:-28 33:16 35:9 36:-15 37:-17 38:-20 40:-13 42:-11 43:-70 44:265 47:-25 48:-18 49:-12 52:-15 53:-21 54:-22 55:69 57:-23 58:-15 60:-12 61:-10 62:-10 63:-17 64:-21 65:-27 69:-8 70:-12 71:-11 72:-11 73:-15 74:-8 75:-29 76:-10 77:-24 78:-13 81:-8 82:-8 83:-22 84:-18 85:12 86:26 87:-16 89:-24 90:-18 91:-23 92:-11 93:-16 94:-16 95:-20 96:-12 97:-8 98:-13 99:181 100:67 101:186 102:112 103:69 105:153 106:138 107:14 108:-35 109:-15 110:-26 111:-37 112:-17 113:-25 114:-25 117:-15 118:-18 119:-12 120:-9 121:-12 122:-24 124:-21 125:24
to press	11:27 13:33 16:-10 29:-9 86:8
press today	44:-9 125:50
i press	11:26 16:40
press in	11:16 25:45
we to	10:12
press on	11:9 16:-13 26:47 28:-10 29:-11 99:10 105:24 106:26 125:-12
press for	11:19 54:-8 105:50 115:18 125:25
)~",
R"~(press $	9:-11 11:12 14:-12 16:-16 17:-9 24:16 25:33 26:63 28:-10 29:-16 33:-17 35:42 43:-8 44:35 45:10 77:-8 86:17 99:53 100:54 102:-9 103:57 105:-9 106:18 122:-9 125:18
press==ing	2:-12 11:36 13:-14 16:71 25:-12 27:20 29:-14 32:-12 33:-10 35:30 43:-29 44:55 45:36 54:-8 55:28 86:10 97:9 99:-17 104:40 105:-13 107:43 108:-9 115:15 125:-17
need press	11:16 100:-9 103:54 106:32 125:-13
press==ed	2:-10 11:43 13:19 15:-24 16:14 17:-14 24:15 25:-11 29:-34 33:66 43:-11 44:308 45:-10 65:-10 77:-9 86:-10 91:-9 95:-8 97:-9 99:-8 101:-9 102:-14 105:-9 113:-10 114:-8 125:50
be press	11:44 16:28 29:-16 44:-14
for today	26:11 54:16 101:13 108:29
until #o	20:10
should be	0:-8 1:20 5:-9 47:11 55:30 66:-10 69:17 83:10 98:19 104:16 106:33 117:-8 118:24 125:-14
this morn	3:-8 11:-8 13:-12 25:-12 41:12 43:23 44:11 45:15 50:10 54:13 66:8 74:11 75:-16 77:19 95:32 96:11 97:20 101:31 102:-9 105:20 107:27 108:12 111:32 115:40 117:21 125:-14
morn $	11:34 25:-16 26:55 28:-12 29:41 33:-10 41:14 43:23 44:16 54:13 95:25 101:38 102:-9 105:13 107:33 108:9 110:-15 111:25 115:47 117:16 125:-17
latest==	9:9 11:81 16:-11 29:73 107:-9
latest	9:9 11:81 16:-11 29:73 107:-9
^ latest	11:41
latest press	11:44
press by	11:46 29:-13
by date	11:29
date $	11:9 31:15 125:11
date==	9:37 11:14 12:24 27:-9 29:12 30:19 47:93 117:-9 118:29 125:33
the press	6:-10 11:11 14:-9 15:-9 16:-18 17:-14 25:113 26:81 28:-31 29:42 30:-10 31:-8 33:-15 35:-10 37:-8 44:33 47:-8 54:-12 57:-11 63:-10 75:-20 83:-8 85:16 90:-8 99:66 101:72 102:66 105:85 107:-10 109:-8 110:-12 111:-13 115:13 125:-14
date of	11:17 118:12
date for	11:17 29:15 30:14 47:14 118:17
^ press	11:-15 13:-16 16:42 26:11 29:21 35:-9 43:-21 44:80 55:60 85:-9 97:8 99:-11 101:110 102:44 104:21 105:36 106:13 115:-8 118:-8 125:20
the latest	9:9 11:40 29:70
latest day	9:10 11:8
day to	9:29 11:8
day of	8:-17 9:30 11:14 47:14 112:13
time==	0:-16 5:-11 8:-13 9:-9 11:-17 12:-10 13:-20 14:-12 15:-8 16:-15 17:-19 19:33 20:25 22:13 23:-12 25:-16 27:90 28:23 29:67 30:15 32:34 33:-22 35:-10 43:-19 47:20 48:-11 54:9 64:-14 65:56 83:-9 98:8 99:13 101:-8 104:16 105:-8 106:49 107:-12 108:9 109:45 111:-12 112:-8 115:-21 117:-9 120:8 121:35 125:13
time	0:-16 3:-8 4:-11 5:-12 8:-15 9:-10 12:-15 13:-20 14:-13 15:-9 16:-19 17:-21 19:32 20:24 22:16 23:-12 25:-17 26:43 27:100 28:34 29:58 30:11 32:46 33:-25 35:-13 43:-20 47:20 48:-11 52:-11 54:8 61:-8 64:-14 65:56 83:-9 99:12 101:-10 104:15 105:-10 106:47 107:-12 109:44 111:-13 112:-8 115:-21 117:-9 120:8 121:33 125:11
press time	11:34
time $	19:28 20:31 29:48 33:-13 65:21 93:9 95:9 115:-19 121:15 125:26
anyth due	11:14
with @job	11:-14 13:26 29:24 113:48
when is	9:18 11:45 13:-13 25:65 26:-25 28:25 29:37 31:55 45:-8 125:-10
@job due	11:-10 47:33
^ recheck	11:24 17:-10 45:113 55:48 75:-14 89:-43 115:84
#n due	11:-9 12:30 47:24 54:-8
recheck of	43:-10 45:75 89:-23 105:-8 115:70
check the	18:11 43:9 115:8
@job again	45:21 72:20 95:-14 115:40
at @job	45:18
at the	3:-15 4:17 5:-8 8:14 9:-8 12:63 14:-23 17:-11 23:-8 24:24 25:16 26:-10 27:-9 33:-9 35:-9 36:10 41:-9 44:-10 45:27 46:33 48:20 50:13 53:14 54:10 58:60 61:21 64:11 76:57 77:21 78:-9 85:-18 87:-12 91:-10 92:17 100:-8 103:34 115:-14 120:10 125:-21
at job	11:19 16:10 29:-9 45:9 89:-8 115:31 125:20
#n again	11:22 16:28 78:31 115:9 125:22
must the	4:11 11:19
press at	44:12
latest $	11:21
#n have	27:19 45:24 72:-11 75:12 81:10 90:19 125:25
@job have	11:27 29:-19 74:24 90:10
press job	13:-13 15:-17 16:58 29:-12 33:64 43:-16 107:45
press the	43:-9 44:69 106:11
@job at	3:-9 13:21 17:29 41:39 42:-14 76:15 78:10 95:10 96:12 107:11
press @job	13:-8 16:38 43:-8 44:13
we press	16:52 125:-18
is job	4:-13 11:17 13:94 15:54 16:80 23:-12 27:23 29:79 43:-26 44:-13 65:-10 113:-30 114:-9 125:-58
want $	4:12 9:35 11:12 29:-10 32:-16 98:23 99:19
#n promis	11:12
promis $	11:38 30:44 118:12
day is	11:35 13:-8
@job promis	11:32
which day	11:26 28:21 30:9
deadlin==e	11:50 47:73 113:-12 122:9
deadlin	11:50 47:73 113:-12 122:9
the deadlin	11:8 47:23
deadlin of	11:24
^ deadlin	11:16
deadline==s	10:24 11:107 122:37
deadline	10:24 11:107 122:37
the deadline	11:17 29:8
deadline on	11:27
^ deadline	11:68
deadline for	11:17
until today	47:9
person==	14:-15 20:16 28:20 29:30 35:-8 49:-9 55:-8 56:-10 58:124 59:14 61:43 62:41 63:59 64:-18 65:14 78:-14 92:-12 98:-13 107:16 109:10 125:-15
^ job	1:-18 2:-20 3:-32 4:-23 5:-16 6:-13 11:-19 12:48 13:107 15:-49 16:-35 17:-22 23:-26 24:-12 27:-23 29:-37 33:-45 37:-29 38:-14 40:-12 42:-16 43:112 44:22 47:94 48:29 61:-13 64:64 65:30 71:-13 72:-23 73:25 74:117 75:-15 77:-11 78:-18 81:-10 83:-13 84:-22 87:-9 90:48 91:79 92:24 93:79 94:38 95:8 96:11 97:13 99:-11 102:-8 104:-12 105:-14 107:23 108:-40 113:98 114:64 115:-8 121:-8 125:-45
person	11:-13 14:116 20:14 25:-11 28:18 29:23 30:-8 32:-8 33:16 35:-13 49:-10 55:-10 56:-11 58:118 59:14 61:42 62:39 63:58 64:-18 65:14 78:-15 92:-13 98:-13 107:16 108:-8 109:10 112:-8 125:-19
@person	0:-21 1:-29 2:-15 3:-13 4:-20 5:-20 6:-19 7:-11 8:-22 9:-20 10:-14 11:-40 12:103 13:-42 14:-19 15:19 16:-23 17:-33 18:-18 19:-16 20:-16 21:-17 22:-16 23:-33 24:-23 25:-21 26:61 27:-31 28:107 29:96 30:33 32:-15 33:75 34:-8 35:-13 36:-20 37:-12 38:-22 39:-10 40:-16 41:9 42:-11 43:31 44:-17 45:-22 47:-32 48:-19 49:-8 51:-9 52:-62 53:-29 54:-33 55:-16 58:-49 59:134 60:14 61:191 62:162 63:171 64:134 65:31 69:-14 70:-12 71:-9 72:-13 73:-13 74:-8 75:-26 76:-10 78:-22 79:-8 81:-11 82:-8 83:-8 84:-15 85:-9 86:-9 87:-23 89:-21 90:-11 91:-17 92:-22 93:-13 94:-15 95:-18 96:-14 97:-14 98:-12 99:-14 100:-8 101:-35 102:-26 103:-8 104:-19 105:64 106:27 107:51 108:-27 109:148 110:103 111:127 112:-33 113:-23 114:-19 115:-19 116:-10 117:-17 118:-24 120:-13 121:-19 122:-10 124:-16 125:55
person @person	12:14 28:28 29:40 33:12 58:-18 60:-10 63:-13 64:-14 78:-13 92:-12 107:18 109:11
@person mine	28:8 29:13 61:-8 64:-12
mine ~	28:18 29:18 33:10 61:-15 64:-13
&@person	0:-21 1:-27 2:-15 3:-13 4:-20 5:-20 6:-19 7:-11 8:-22 9:-20 10:-14 11:-39 12:104 13:-41 14:-19 15:23 16:-23 17:-33 18:-18 19:-16 20:-16 21:-16 22:-16 23:-33 24:-23 25:-21 26:61 27:-30 28:71 29:59 30:33 32:-15 33:70 34:-8 35:-13 36:-20 37:-12 38:-22 39:-10 40:-16 41:10 42:-11 43:33 44:-17 45:-22 47:-32 48:-19 49:-8 51:-9 52:-62 53:-29 54:-33 55:-16 58:-34 59:130 60:21 61:173 62:181 63:186 64:124 65:38 69:-14 70:-11 71:-9 72:-10 73:-12 75:-25 76:-9 78:-12 79:-8 81:-11 82:-8 83:-8 84:-15 85:-9 86:-9 87:-23 89:-21 90:-11 91:-17 92:-12 93:-12 94:-15 95:-18 96:-13 97:-12 98:-12 99:-14 100:-8 101:-35 102:-25 103:-8 104:-19 105:65 106:28 107:40 108:-27 109:144 110:98 111:133 112:-30 113:-23 114:-19 115:-19 116:-10 117:-17 118:-24 120:-13 121:-19 122:-10 124:-15 125:57
bench==	2:-10 5:-10 6:29 8:-11 9:-8 11:-14 12:75 13:-29 14:27 15:115 16:-8 17:-16 19:-9 23:-13 25:-12 26:-10 27:-13 28:-8 29:-22 33:-13 35:-11 43:-14 49:-9 56:-9 58:88 61:99 62:-9 63:-9 64:110 65:21 78:-9 87:-12 92:-10 98:-13 99:26 101:28 102:-9 103:126 104:-9 105:13 106:-8 107:-8 108:-10 110:-9 111:-9 113:-10 114:-11 125:-15
bench	0:-10 2:-12 4:-9 5:-13 6:24 7:-10 8:-27 9:-25 10:-12 11:-35 12:59 13:-35 14:34 15:103 16:-12 17:-23 18:-8 19:-12 20:-10 21:-10 22:-13 23:-28 24:-12 25:106 26:51 27:-20 28:-26 29:-10 30:-12 31:-15 32:-14 33:-20 35:-26 36:-9 37:-8 38:-14 39:-8 40:-11 43:-21 45:-8 47:-10 48:-10 49:-16 52:-11 53:-21 55:-16 56:-15 57:-14 58:86 59:-9 60:-13 61:119 62:-17 63:-16 64:95 65:8 71:-9 73:-8 78:-11 83:-8 86:-9 87:-15 89:-11 91:-13 92:-12 95:-8 97:-8 98:-29 99:195 100:55 101:115 102:84 103:111 104:-29 105:103 106:61 107:-14 108:-22 109:-12 110:-30 111:-29 112:-10 113:-13 114:-13 115:-14 117:-9 118:-11 119:-9 120:-10 121:-14 122:-17 124:-13 125:-49
bench ~	12:22 58:17 64:28
~ person	12:12 28:8 61:-8
@person bench	12:11
job do	11:-9 12:39
are open	28:-10 31:8 52:17 54:12 109:25 112:8
open $	8:-17 9:-11 11:-8 12:51 13:21 109:58 112:13
^ queu	12:30
are my	28:26
my job	12:45
are mine	12:53 26:45 28:-9 29:-26
mine $	12:54 13:-29 15:54 17:-12 64:129 65:-9 113:-14 125:-13
job of	0:-11 4:24 12:34
of @person	12:15 26:13 28:9 33:10 52:-20 61:13 62:-9 105:9 109:42 110:10 111:-9
)~",
R"~(@person $	12:51 26:-11 27:-11 29:46 33:-8 59:89 61:-17 62:50 64:72 65:34 105:25 109:-16 110:-12 111:-10
show job	12:9 13:72
show @person	12:10
@person job	12:32 64:19 78:-9 92:-9 107:10
^ @person	1:-8 4:-10 6:-9 11:-8 12:-20 13:-14 14:-9 15:-20 16:-11 17:-13 18:-9 23:-8 27:-9 28:-75 29:-38 30:-20 31:-9 33:-30 36:-12 43:55 48:-8 50:-9 52:-29 53:-13 54:-14 58:-17 59:53 60:-28 61:105 62:120 63:88 64:47 65:-23 75:-10 87:-9 89:-8 99:-11 101:-14 102:-15 105:27 106:9 107:31 108:-9 109:139 110:157 111:97 112:-16 113:-9 114:-8 115:-8 118:-13 121:-9
job doe	9:-8 12:-16 14:46
doe @person	12:25 26:21 28:87 62:-8 109:-8 111:-13
@person have	12:28 26:22 29:20
has @person	12:8 26:44 29:30
@person got	12:40 29:-15 59:12 61:18
the ~	58:17 61:11 64:8
~ bench	12:10 58:17 61:16 64:24 103:-8
bench $	8:-8 9:-9 11:-14 12:15 13:-10 15:13 17:-8 25:19 26:42 27:-8 28:-9 33:-9 35:-10 58:56 61:38 64:93 65:-12 99:38 100:49 101:-9 102:-8 103:92 106:40 122:-8 125:-23
of ~	32:75 121:42
job at	12:24 14:-10
at ~	11:-13 56:80 58:-10 121:23
on ~	35:16
are on	4:12 32:-9 116:9
are at	17:-9 24:27
about==	0:9 1:-12 2:9 5:-11 6:8 8:28 9:-9 13:55 16:-9 17:78 19:-12 22:36 23:-10 25:37 27:-9 29:-12 32:-8 37:-8 39:-10 43:-10 45:-11 51:34 53:-8 62:-12 67:12 68:-10 75:-27 77:-8 79:50 84:12 86:8 89:28 103:-9 112:-14 125:78
about	0:9 1:-12 2:9 5:-11 6:8 8:28 9:-9 13:55 16:-9 17:78 19:-12 22:36 23:-10 25:37 27:-9 29:-12 32:-8 37:-8 39:-10 43:-10 45:-11 51:34 53:-8 62:-12 67:12 68:-10 75:-27 77:-8 79:50 84:12 86:8 89:28 103:-9 112:-14 125:78
what about	8:42 13:22
about job	13:14 17:12 84:14
how about	13:18 25:40 103:-8
about @job	13:9
about the	8:51 9:-13 13:43 17:-11 19:-9 25:39 33:9 35:18 38:-9 103:-8
far==	2:-10 4:14 5:23 9:17 13:26 14:17 16:29 21:10 27:47 32:-13 33:9 46:11 51:8 77:26 88:-10 107:-12 125:-8
far	2:-10 4:14 5:23 9:17 13:26 14:17 16:29 21:10 27:47 32:-13 33:9 46:11 51:8 77:26 88:-10 107:-12 125:-8
how far	2:-9 4:15 5:25 9:18 13:28 16:25 17:-12 27:48 32:-13 107:-11
far are	27:20
we with	13:65 16:-10 27:15 107:-10
with job	16:-8 29:13 107:60 108:15 113:28
wher are	1:-11 4:37 13:44 107:-8
status==	13:171 25:13 62:16
status	13:171 25:13 62:16
the status	13:21
status of	13:76
stat==e	2:-12 5:14 13:81 25:44
stat	2:-12 5:14 13:81 25:44
the stat	13:58
stat of	13:57 25:44
^ status	13:55
slot is	0:-8 1:10 13:17 41:-11 77:33 91:52
is open	12:17 13:28 28:-12 109:29
open on	12:15 13:9 28:32 52:-8 53:33 54:15 112:27 125:16
slot are	13:20 18:11 43:9 74:10
open of	13:8
@job is	0:-9 2:-10 4:-16 5:-13 11:-18 13:-30 15:-28 16:-13 17:-31 18:-9 23:-12 29:-18 36:-8 37:-15 41:59 42:14 43:24 44:37 45:28 48:31 64:24 65:66 70:-11 71:13 73:28 83:30 84:-20 87:49 89:-23 93:14 97:21 106:13 108:-13 113:58 114:60 115:9 125:-44
is still	5:-10 17:-26 23:-8 27:41 31:17 45:64 87:45 124:-9 125:-16
fret is	5:-10 13:42 17:-8 78:22 93:17
miss==ing	13:40 33:8 44:11 125:-11
@job are	4:-12 17:-8 18:8 43:27 70:-19 71:27 74:24 82:8 91:18 95:12
are still	1:9 2:8 3:10 5:-10 11:-8 12:32 13:34
miss	13:40 33:8 44:11 125:-11
still miss	13:25 125:-11
still to	5:-17 13:18 27:33 31:19
to make	2:12 5:-8 78:12
make on	115:19
#n are	4:-12 5:-9 16:-11 42:-9 44:24 45:-8 70:19 74:18 78:-9 80:11 81:41 82:-16 83:15 84:28 89:-15 90:15 95:25 96:20 105:-8 108:-8 125:14
left to	13:57 17:31 27:-11
dress==ed	1:79 3:27 13:19 39:33 42:41 43:69 50:-15 72:-9 79:-11 80:-11 107:-13
yet==	1:-8 8:9 13:70 15:15 16:63 17:28 19:-10 31:53 33:-15 40:-10 43:-11 44:-20 110:-12 125:55
is @job	11:13 13:9 15:57 16:-16 17:29 23:-18 64:-13 125:70
all press	13:31 16:-14
yet	1:-8 8:9 13:70 15:15 16:63 17:28 19:-10 31:53 33:-15 40:-10 43:-11 44:-20 110:-12 125:55
press yet	16:76 44:-18 125:-15
yet $	8:10 13:53 16:64 17:28 19:-10 31:53 43:-10 44:-20 110:-12 125:44
#n cut	6:13 13:16
@job cut	6:54
@job done	47:15
all cut	13:12 43:17 71:38
person==s	14:131 33:13
retir==ed	14:115 15:-11 33:-8 58:-11 61:-16 62:59 63:48 102:13 110:-9 118:11
^ person	14:79
retir	14:98 15:-12 26:-10 28:-10 29:-13 33:-11 58:-15 59:-12 61:-28 62:187 63:49 64:-10 102:12 109:-11 110:-18 117:-14 118:11 125:22
retir ~	14:14
~ retir	14:10
person $	11:-9 12:-10 14:100 33:11 58:-11 60:13 61:34 62:49 63:35 125:-9
who is	1:-8 11:-9 13:-13 14:70 15:86 25:40 26:22 28:74 29:52 32:-16 33:-15 101:-9 103:-9 125:-31
work==s	14:37 25:-9 29:-10 33:-18 44:-8 54:14 55:-8 58:45 61:35 62:-20 63:29 64:-11 102:54 109:83 110:-12 111:42
who work	14:31 15:-12 28:42 29:-9 33:11
work here	14:55 28:-19 58:40 62:34 63:56 109:-24 110:-8 111:-9
here $	14:46 25:-10 28:9 35:42 50:11 64:24 65:-8 108:15 117:69 118:-20 125:-9
who all	14:46
all is	14:19 23:8 45:13
shop $	8:20 14:41 28:-19 38:9 48:29 54:11 61:-12 62:28 63:35
is here	14:9 50:11 53:9 109:38 110:-12 111:14 117:69 118:-15 119:-11
peopl==e	12:-10 14:155 25:-10 28:29 33:-10 34:8 35:-8 58:12 62:20 125:-8
peopl	12:-10 14:155 25:-10 28:29 33:-10 34:8 35:-8 58:12 62:20 125:-8
the peopl	14:42 28:33 29:-11
peopl $	14:94 62:22
show peopl	14:23
who has	14:31 15:13 23:78 25:22 26:38 28:-8 33:-73 62:-10 63:12 65:20
has retir	14:28 62:31 63:-11 118:12
retir $	14:52 61:-9 62:70
whos==e	12:35 13:-19 15:188 23:21 50:13
whos	12:35 13:-19 15:188 23:21 50:13
^ whos	12:36 13:-16 15:161
whos $	15:79 23:23
whos job	13:-9 15:49
whos is	15:36
is on	8:36 9:11 11:-18 13:-9 14:20 15:8 17:-12 23:-10 26:-22 27:10 29:90 31:41 33:-8 45:-30 92:11 107:-8 108:32 109:-11 110:36 111:-10 113:8 115:32 125:-10
who doe	14:-8 15:38 28:-8 29:52 30:9 32:-9 33:-22
build==s	15:12 64:32
build	15:27 64:32
build the	15:14
has the	5:-9 8:-11 12:15 15:63 21:42 22:-9 26:9 29:-11 31:33 40:15 47:-13 65:13 105:20 107:-8 113:51 125:-18
has job	15:34 17:14 29:9
with $	15:31 42:-8 58:19 81:19
what bench	15:59
bench doe	13:-8 15:67 64:-8
which bench	13:-13 14:52 15:73
bench has	15:19 99:21
bar==	4:-8 9:-16 11:-10 16:128 17:-15 25:-12 27:-10 29:-10 35:-8 42:-18 44:50 46:-17 49:-14 50:-10 55:-14 57:-13 75:-17 85:182 86:231 87:24 98:17 99:-8 100:-35 101:-15 108:-9 120:-8 122:-16 125:45
load==	0:-13 2:-8 3:-10 4:-16 5:-12 8:-10 9:-8 16:137 19:-8 24:133 25:-8 29:19 44:26 71:-10
press slot	16:11 106:49
bar	4:10 5:-13 9:-16 11:-11 14:-8 16:126 17:-15 25:-13 27:-24 29:-11 35:-9 39:-9 42:-18 44:49 46:-17 49:-14 50:-10 55:-15 57:-15 58:12 75:-17 85:184 86:252 87:23 98:16 99:-9 100:-40 101:-15 108:-9 120:-8 122:-19 125:42
#n bar	16:10
bar ~	16:43 44:-11 85:26 86:63 100:-8
~ bar	16:15
load	0:-17 2:-20 3:-10 4:-19 5:-13 8:-10 9:-8 16:146 17:-9 18:-8 19:-8 24:146 25:-8 27:-8 29:22 33:25 44:25 55:15 71:-11 73:10 75:9
load #c	3:-8 4:-9 16:8 44:30 71:-10
pound	16:14 44:38 55:26 75:-8 85:28
#c pound	16:15 44:38 55:9 75:-8 85:28
@job load	44:12
&#c#n#o#r@job	44:11 71:10
press all	25:11
#n load	44:17
lb	5:-15 16:41 44:54 45:-8 55:91 71:-9 85:35 98:-8 125:16
#c lb	5:-15 16:41 44:55 45:-8 55:73 71:-9 85:35 125:18
off==	2:-14 3:-18 4:-15 5:43 8:-8 9:-16 10:-12 11:-23 12:-9 13:-28 14:-18 15:-19 16:20 17:45 18:-13 19:-12 20:-13 22:-10 23:-20 25:-15 26:-24 27:-17 28:44 29:-42 30:-12 31:-9 33:-25 35:-13 36:-19 37:-10 38:10 40:24 41:-9 42:8 43:-26 44:-12 45:-17 48:94 50:-13 51:-9 52:-9 53:31 54:-8 55:-10 57:34 59:-21 60:14 61:-14 62:-11 63:-11 64:-18 65:27 66:-18 69:45 70:11 71:79 77:24 79:-13 83:-18 84:34 85:-8 86:14 87:56 89:-17 90:-8 91:-16 92:-9 93:-11 94:-11 95:-13 96:-8 97:-9 98:-10 99:-10 100:56 101:29 102:-9 103:-9 105:-9 106:61 107:-28 108:110 109:-29 110:137 112:-12 113:-19 114:-17 116:8 117:-11 118:-10 119:47 120:-8 122:10 124:-12 125:12
off	2:-14 3:-18 4:-15 5:43 8:-8 9:-16 10:-12 11:-23 12:-9 13:-28 14:-18 15:-19 16:20 17:45 18:-13 19:-12 20:-13 22:-10 23:-20 25:-15 26:-24 27:-17 28:44 29:-42 30:-12 31:-9 33:-25 35:-13 36:-19 37:-10 38:10 40:24 41:-9 42:8 43:-26 44:-12 45:-17 48:94 50:-13 51:-9 52:-9 53:31 54:-8 55:-10 57:34 59:-21 60:14 61:-14 62:-11 63:-11 64:-18 65:27 66:-18 69:45 70:11 71:79 77:24 79:-13 83:-18 84:34 85:-8 86:14 87:56 89:-17 90:-8 91:-16 92:-9 93:-11 94:-11 95:-13 96:-8 97:-9 98:-10 99:-10 100:56 101:29 102:-9 103:-9 105:-9 106:61 107:-28 108:110 109:-29 110:137 112:-12 113:-19 114:-17 116:8 117:-11 118:-10 119:47 120:-8 122:10 124:-12 125:12
)~",
R"~(crown==	0:-9 1:-9 8:20 9:-14 13:-8 18:-8 27:47 32:26 39:-24 44:-9 45:-10 49:110 50:21 51:-9 66:-10 69:-14 74:-8 75:-8 76:-9 80:-16 85:-13 87:-8 88:132 90:93 98:-18 99:-13 103:11 104:35 117:26 120:-19 125:-12
the bar	16:12 86:97 100:-11
~ with	56:25 57:-8 58:17 116:11
with a	16:16 18:8 42:-8 50:13 60:14 74:11 89:-9 96:20 98:10 99:10 101:10 120:13 121:-10
crown	0:-13 1:-13 4:-8 8:9 9:-16 13:-13 18:-9 19:57 27:42 32:24 33:-9 39:-26 40:8 43:34 44:-13 45:-12 49:107 50:20 51:-10 55:-21 66:-11 69:-16 74:-8 75:-8 76:-9 77:16 80:-17 82:-12 83:-8 85:-14 87:-9 88:131 89:-9 90:101 92:-8 97:-9 99:-27 103:55 104:80 117:24 120:-20 125:-16
a crown	16:12 50:12
crown #d	16:-11 49:46 50:17 88:21
with #c	16:27 39:15
lb $	5:-14 16:30 44:20 55:64 85:32
wide==	3:-14 4:-10 8:27 9:-19 16:-22 18:41 41:-9 44:-9 49:73 74:69 76:60 82:-8 85:38 86:-11 88:42 91:19 92:-10 125:56
with crown	16:20
wide	3:-14 4:-10 8:27 9:-19 16:-22 18:41 41:-9 44:-9 49:73 74:69 76:60 82:-8 85:38 86:-11 88:42 91:19 92:-10 125:56
wide $	16:48 49:-8 74:55 76:28 85:13 88:38 91:17
&#c#d#n	41:18 42:12 44:-9 120:8
pound $	16:14 44:8 85:25
at #c	16:14 44:27 50:20 66:-16 67:26 87:46 107:-12 125:23
#c with	59:12 60:10
&#c#d@job	47:18
a bar	87:30 125:27
under==	9:16 11:13 13:-8 17:-19 31:28 36:-8 41:-10 44:43 45:-16 51:67 64:19 65:-8 69:-8 70:-8 77:-10 87:93 89:34 90:123 91:13 92:34 93:-8 97:-10 101:-10 119:8 121:8
under	9:16 11:13 13:-8 17:-19 31:28 36:-8 41:-10 44:43 45:-16 51:67 64:19 65:-8 69:-8 70:-8 77:-10 87:93 89:34 90:123 91:13 92:34 93:-8 97:-10 101:-10 119:8 121:8
@job under	44:22
&#c#n@job	44:28 87:29 107:-9
press fret	16:58
again with	16:15 44:-9
~ at	55:-12 56:80
again under	44:26
under the	11:19 16:10 44:27 87:39 90:19 92:44 101:-9 119:9 121:10 125:-8
#d wide	16:-17 18:10 49:26 74:37 76:33 88:14
pass==	3:22 4:-8 13:-8 16:109 17:-13 44:80 55:9 125:34
^ next	16:26 17:42 26:-12 28:-8 29:32 44:25 54:11 106:12 109:-8 111:14 112:12 125:-15
pass	3:20 4:-12 6:-11 13:-12 16:233 17:-15 23:-10 27:-15 29:-9 43:-12 44:77 45:31 55:9 83:-12 84:-12 107:-8 115:-11 125:31
next pass	16:83 17:-10 44:71 125:-10
pass of	16:19 44:57
&#c@job	16:23 44:-10 73:27 87:18
&#c#n#r	16:20
is next	5:12 8:-8 11:36 27:28 29:-11 113:34
pass on	44:11
which is	84:13 96:19
pass $	16:86 44:-13
fret next	16:15
fret are	0:59 13:-12 16:18 17:47 24:14 27:-11 107:-12
are next	16:22 17:-10
next on	16:8 17:29 27:22 29:25 101:-8 125:-8
fret come	16:9 73:10
come next	17:-16 27:31 29:30 110:15 116:13 118:9
next for	16:27 17:-18 26:-8 27:27 29:49
press next	16:19 26:-12 29:11 101:-16 105:39 106:15
stop==	1:-8 13:-8 16:22 38:44 57:101 107:-19 108:82 125:-12
stop	1:-10 6:-8 13:-12 16:38 23:-10 33:-10 35:-8 38:43 43:-13 55:-8 57:98 93:20 107:-37 108:227 125:-15
i stop	16:38 108:13
stop press	16:24
did==	0:-9 1:-55 2:-13 6:-8 8:-19 9:-28 10:-12 13:-18 16:26 17:41 18:-8 19:128 20:74 21:64 22:-13 23:24 24:38 25:-11 26:68 27:-12 29:-28 30:-10 31:40 33:127 34:54 35:-20 36:-19 37:-14 38:-16 39:-10 40:-20 42:-13 44:22 80:9 83:-17 84:-11 89:-17 90:-18 91:-9 95:13 97:9 101:-12 106:-14 107:-9 108:-11 115:-8 117:-19 119:-8 123:41 124:13 125:26
did	0:-9 1:-55 2:-13 6:-8 8:-19 9:-28 10:-12 13:-18 16:26 17:41 18:-8 19:128 20:74 21:64 22:-13 23:24 24:38 25:-11 26:68 27:-12 29:-28 30:-10 31:40 33:127 34:54 35:-20 36:-19 37:-14 38:-16 39:-10 40:-20 42:-13 44:22 80:9 83:-17 84:-11 89:-17 90:-18 91:-9 95:13 97:9 101:-12 106:-14 107:-9 108:-11 115:-8 117:-19 119:-8 123:41 124:13 125:26
wher did	1:-38 16:25 20:63 32:-13 33:36 125:33
did i	16:24 19:-8 26:11 31:12 33:8 35:-8 125:42
stop==ped	16:16 63:8 77:9 107:-14 108:79
did we	9:-13 11:15 13:-8 16:47 19:46 20:15 21:24 23:40 31:24 32:-11 33:11 40:-8 83:-14 84:-8 125:-28
we stop	108:16
press of	43:-9 44:44
stop $	16:9 108:28
was==	0:-14 1:-10 2:-12 3:-17 4:-16 5:-10 8:-18 9:-16 10:-8 12:-11 13:43 15:30 16:-23 17:-47 18:-12 19:27 20:-18 21:33 22:-11 25:22 27:-11 28:-16 29:-29 30:-15 31:-9 32:-8 33:41 34:30 35:-14 37:-14 38:13 39:-11 40:19 41:-18 42:-11 43:8 44:-19 47:-13 53:-10 55:-10 57:-9 61:9 62:23 64:-9 65:-11 66:-8 71:27 72:-8 73:22 75:-8 77:23 78:40 80:12 83:-14 84:14 85:8 86:-10 89:11 91:19 92:26 93:-15 95:21 97:68 99:-9 101:-14 104:53 107:-23 108:8 110:-33 111:-9 112:25 115:-10 117:33 118:27 123:26 124:28 125:35
was	0:-14 1:-10 2:-12 3:-17 4:-16 5:-10 8:-18 9:-16 10:-8 12:-11 13:43 15:30 16:-23 17:-47 18:-12 19:27 20:-18 21:33 22:-11 25:22 27:-11 28:-16 29:-29 30:-15 31:-9 32:-8 33:41 34:30 35:-14 37:-14 38:13 39:-11 40:19 41:-18 42:-11 43:8 44:-19 47:-13 53:-10 55:-10 57:-9 61:9 62:23 64:-9 65:-11 66:-8 71:27 72:-8 73:22 75:-8 77:23 78:40 80:12 83:-14 84:14 85:8 86:-10 89:11 91:19 92:26 93:-15 95:21 97:68 99:-9 101:-14 104:53 107:-23 108:8 110:-33 111:-9 112:25 115:-10 117:33 118:27 123:26 124:28 125:35
far did	16:17
we get	2:11 5:9 8:-19 9:15 16:11 19:56 20:-13 32:25
get press	16:8
get on	13:18
i get	6:11 7:13 32:29 45:15 46:-8 89:-14 105:21
again at	16:19 44:-14 78:16 102:16 115:16
press #n	44:38 101:25 102:15 125:-11
bar $	16:68 44:27 58:17 85:26 125:-13
we took	0:13 81:-8 82:26
bar for	16:13 75:-10
bar of	86:15 101:-8
up to	4:30 11:17 16:-10 44:27 70:-11 71:14 89:-14 93:40
to #c	41:23 44:84 55:-8 67:16 75:-8 87:8
press to	99:30
#c of	79:13 81:8 82:31 117:13
up with	52:22 111:-8
up at	102:12
lb for	44:11
lb on	16:24
i come	111:24
were==	0:-10 1:34 2:-13 3:-8 8:-15 17:-27 19:27 20:9 29:-8 33:60 34:39 36:-17 45:9 50:16 70:-11 71:25 72:10 82:18 89:-10 90:-8 95:8 97:28 101:-8 125:40
were	0:-10 1:34 2:-13 3:-8 8:-15 17:-27 19:27 20:9 29:-8 33:60 34:39 36:-17 45:9 50:16 70:-11 71:25 72:10 82:18 89:-10 90:-8 95:8 97:28 101:-8 125:40
load were	16:8
is #c	46:10 50:10 67:11 85:-8 99:16 113:8 121:21
if the	0:14 3:23 9:13 16:23 18:11 29:8 30:12 125:25
the load	16:51
pass==es	6:-10 16:124 27:-9 45:34 83:-8 84:-10 115:-9
the pass	16:36
pass for	4:-8 16:103 83:-10 84:-11
me all	8:-8 16:63 43:18
all pass	16:45
list me	34:14
list all	10:-12 14:-16 16:23 19:18 23:74 35:41 84:-11
show all	16:22 19:16
press plan	16:47
much load	16:15
load for	16:37
which load	0:-9 24:47 33:30
load on	16:13 24:8
on fret	2:-9 16:42 17:-13 24:-8 77:-8 82:14 89:35 91:10 95:-15
what load	16:47 24:40
too==	0:23 2:30 4:-24 6:55 8:-11 9:-12 11:31 13:-18 15:-11 18:34 22:101 23:-18 25:-8 28:-9 29:-16 31:19 32:-10 33:-9 36:-10 37:-12 39:-8 40:25 41:-30 42:71 43:-14 45:-13 52:-13 54:31 55:-10 58:37 61:18 71:-12 72:-11 75:-10 78:-21 81:11 82:-8 84:-12 87:25 89:-16 90:44 91:40 94:10 95:-13 97:10 98:16 105:-12 106:-11 107:-9 108:-9 111:-8 119:31
middl==e	17:90 39:10 45:13 74:12 85:15 89:18 94:14 108:13 125:-12
load stand	16:16
stand #d	41:-8 92:17
too	0:23 2:30 4:-24 6:55 8:-11 9:-12 11:31 13:-18 15:-11 18:34 22:101 23:-18 25:-8 28:-9 29:-16 31:19 32:-10 33:-9 36:-10 37:-12 39:-8 40:25 41:-30 42:71 43:-14 45:-13 52:-13 54:31 55:-10 58:37 61:18 71:-12 72:-11 75:-10 78:-21 81:11 82:-8 84:-12 87:25 89:-16 90:44 91:40 94:10 95:-13 97:10 98:16 105:-12 106:-11 107:-9 108:-9 111:-8 119:31
in too	92:8
too far	77:27
nutward	0:-8 2:15 3:-17 16:31 89:64 90:-18
nutward of	3:-16 16:29
middl	17:107 39:10 45:39 74:12 75:-11 85:15 89:32 94:14 97:-10 108:12 125:-13
the middl	17:54 39:10 45:24 74:12 89:26 94:15 108:14 125:-11
middl $	17:68 74:13 85:15 89:10
stand #n	16:36
mm too	16:16
nutward $	89:8
toward==	2:12 16:8 89:14
toward	2:11 16:16 89:22 90:-9
toward the	2:11 16:13
mm off	16:51 17:-11
off toward	16:8
trebl	2:-8 16:54 17:84 27:-9 35:-11 43:-8 45:18 75:-17 89:72
middl of	89:10 108:16 125:-10
bass	16:25 17:22 45:11 75:-10 89:26
bass of	16:8
off to	16:19 17:-9 53:14 100:8 112:-10
bass $	17:11
bodyward	16:29 89:31 90:-11
bodyward $	89:10
@job stand	13:15 17:15
trebl $	16:13 89:22
the bass	16:17 17:10
#n is	0:-25 1:-33 3:-37 4:-19 5:-8 11:-30 13:-81 15:-31 16:-15 17:-65 18:-14 23:-38 27:-12 29:-30 33:-11 36:-11 37:37 38:48 40:45 41:-8 42:31 43:36 44:-17 45:50 47:24 48:41 55:-13 60:40 64:69 65:56 69:72 70:-10 72:-13 73:13 74:-8 75:44 76:62 77:-10 81:-8 82:-10 83:-11 84:-21 87:31 89:-23 91:-19 92:42 93:19 94:30 97:-12 99:-13 102:24 103:-8 104:-10 106:27 107:21 108:37 112:-10 113:36 114:-10 115:-12 117:9 118:10 119:29 121:-12 125:28
)~",
R"~(#d to	46:8 69:18
side on	16:21 17:-12 89:13
side of	16:-14 17:48 89:26
over==	2:-9 3:-12 5:11 8:-21 16:34 19:-14 20:44 21:40 28:12 42:-9 43:12 44:-9 61:22 64:18 65:-13 78:40 87:27 88:37 89:52 93:9 95:-14 125:-12
to the	0:15 1:-12 4:-13 5:-14 9:-10 12:-13 14:14 16:19 17:-11 20:19 22:-10 23:18 28:13 29:-13 33:25 38:34 39:14 40:23 43:16 47:-8 53:11 55:-13 57:49 61:23 63:27 64:-14 65:28 69:-11 71:-11 83:-19 84:15 98:41 105:-8 107:-8 108:-9 110:14 111:27 118:-9 120:17
over	2:-9 3:-12 5:11 8:-21 16:34 19:-14 20:44 21:40 28:12 42:-9 43:12 44:-9 61:22 64:18 65:-13 78:40 87:27 88:37 89:52 93:9 95:-14 125:-12
&#d#o@job	0:-11 3:18 36:10 41:20 74:-8 76:32 77:-8 78:22 92:17
in to	46:20 49:-9 85:-8 87:9
on #n	0:-16 1:-12 3:25 4:-10 13:-8 16:-21 17:-18 24:38 28:13 29:-20 30:25 42:21 44:-12 53:18 54:14 75:-19 89:31 92:8 95:-14 97:44 105:35 107:-8 109:-10 110:-8 111:59 112:9 115:18 125:32
the trebl	16:34 17:69 27:-8 89:35
trebl side	16:10 17:54 45:9 89:16
off the	16:-9 17:-13 38:22 42:18 48:50 69:16 71:63 77:25 86:15 100:42 108:-11 122:14 125:-8
favour==	16:48 17:-12 84:33
favour	16:48 17:-12 84:33
i favour	16:38 17:-11
favour the	16:35 17:-11
bass side	16:14 89:11
favor==	16:26
favor	16:26
we favor	16:22
favor the	16:12
side $	16:17 17:51 45:43 83:25 89:9
we favour	16:11
favor trebl	16:14
at fret	3:20 42:-8 45:14 75:-11 77:-9 89:-13 91:46 92:13 93:21 97:-8 115:17
of fret	24:10 33:8 44:11 82:-10 90:11 91:16 95:34 96:-10 105:-8 115:9
at slot	0:-8 3:-14 36:9 37:-10 41:19 46:22 76:58 125:15
of slot	0:-10 2:-13 33:36 72:23 75:19 77:12 90:11 91:-9
level==	1:-8 4:-8 8:-18 9:32 13:-50 15:-10 16:-12 17:199 18:-9 23:-8 27:-9 33:-8 43:-12 45:92 51:80 65:-8 87:-10 89:-8 95:-10 97:98 113:-10 125:10
line==	11:8 13:-14 17:64 42:-8 45:20 75:-39 89:56 92:39
level	1:-12 4:-13 8:-19 9:32 13:-57 15:-12 16:-13 17:216 18:-9 23:-8 25:-8 27:-9 29:-8 33:-12 43:10 45:88 48:-8 51:79 64:-8 65:-10 77:-10 87:-12 89:-11 90:-8 91:-14 93:-8 95:-14 97:190 103:24 107:-11 113:-14 114:-9
^ level	17:13 97:51 103:24
line	4:9 11:8 13:-14 17:64 32:-9 42:-8 45:19 75:-39 89:56 92:39
@job line	17:9 89:19
line bass	17:9 75:-10
line trebl	17:10 45:10 75:-15
trebl line	17:13 89:8
line middl	17:8 45:14 75:-10
middl job	45:10
bass job	89:8
#o line	4:12 32:-9 45:12 75:-9
middl line	17:38
&#n#o@job	0:54 3:14 4:-14 5:-8 16:-9 29:-8 33:-9 37:14 45:15 47:-9 65:10 70:19 75:13 76:15 77:-15 89:-9 90:20 92:9 97:11 114:25
#n line	17:9 45:12 75:-19
call	1:-14 9:-8 11:-10 13:-17 14:26 16:-12 17:50 25:-13 26:-8 28:-8 29:-16 30:-14 32:-24 35:-12 39:9 45:-9 48:93 49:49 53:-8 55:-26 57:21 58:16 59:9 61:65 62:-16 63:-16 64:-10 65:-10 69:8 73:22 85:25 86:8 87:-10 98:46 99:101 100:-13 101:-18 103:-26 105:-8 106:-8 108:31 110:16 111:-9 113:-8 119:45 120:29 125:11
#o all	101:8
it level	17:28
level now	17:16
level yet	17:41
#n level	17:44
@job level	13:-8 17:39
now on	17:13 29:-14 52:18 54:-12 55:59 57:18 58:37 61:18 63:-8 99:28 101:-13 103:16 120:16 121:8
how level	13:-22 17:61
level is	13:-23 17:60
@job on	26:9 45:-12 47:33 97:-12 105:17 113:18 115:26
on middl	17:11 89:8
middl side	45:11
call==	1:-11 13:-13 17:55 39:12 48:85 51:8 55:-10 69:10 85:32 98:15 99:67 103:-12 108:30 119:14 125:-10
i call	17:39 119:31
call it	1:-9 17:43 69:13 85:30 108:56
level $	9:29 13:-20 17:44 45:75 51:22 87:-8 97:58 113:-8 125:-15
call the	17:11 98:14 99:15 100:8 103:-11
level on	17:19 97:14
call==ed	14:28 29:-12 32:-21 48:8 49:53 55:-15 57:26 58:20 61:69 62:-15 63:-15 73:24 86:10 98:32 99:34 100:-8 101:-11 103:-13 110:20 111:-8 119:31 120:35 125:27
be call	17:10 61:24 99:14 101:-8
call level	17:10
can the	9:-14 29:10 30:8 32:40
can it	1:-8 3:30
it be	0:19 1:9 18:11 29:10 125:-12
can job	17:16
reading==s	13:-14 16:-11 17:175 33:-13
say==	0:-12 1:-8 7:16 8:11 17:20 32:8 33:-13 34:15 35:47 50:-9 51:13 69:24 104:-13 116:21 125:36
what did	5:-9 8:-13 9:-8 10:-8 11:-10 19:41 20:18 21:25 22:-9 26:30 29:-15 31:28 33:30 34:62 35:-13
did the	8:-10 16:-26 17:10 19:62 20:29 21:24 31:8 33:-21 44:34 45:13 117:-15
reading	13:-14 16:-11 17:175 33:-13
the reading	17:68 33:-10
reading of	17:27
say	0:-13 1:-19 5:-8 7:15 8:9 9:-8 16:-11 17:18 22:-8 33:-10 34:15 35:46 38:-9 40:-10 44:-8 45:12 47:12 48:-9 51:11 55:29 59:16 67:-8 69:57 92:17 104:-13 116:23 118:9 125:52
@job say	45:8 47:15 48:-9
say the	17:13
tell==	1:8 4:-10 5:-10 8:14 13:28 14:12 16:-8 17:21 23:12 24:-11 30:32 35:44 51:17 56:44 119:9 125:26
tell	1:8 4:-10 5:-11 6:10 8:14 12:-8 13:24 14:11 16:-9 17:20 23:11 24:-11 29:-8 30:32 32:-10 33:-8 35:40 51:17 55:-11 56:40 57:64 58:-8 108:-15 113:18 114:-9 119:8 125:25
on trebl	17:9 89:18
about #n	17:36 22:-13 67:14 68:-9 79:34
#n show	117:8
show #n	67:9 68:-8
mean==	11:35 15:10 27:9 28:8 29:-14 39:8 50:14 53:11 104:12 124:13 125:-9
mean	11:35 15:10 27:8 28:8 29:-14 39:8 50:14 53:11 104:12 124:13 125:-9
show for	20:19
is off	14:-10 17:26 28:21 101:34 106:35 110:17 119:9 125:-18
off $	1:18 14:-12 16:-10 17:49 26:-8 28:16 53:39 57:17 69:8 77:-13 100:17 101:30 106:59 108:-23 110:103 112:-10 119:12 125:-35
uneven==	17:25
uneven	17:25
is uneven	17:25
high==	0:-9 1:-10 3:-14 8:31 13:-14 16:-31 17:112 19:21 24:-12 45:27 49:30 51:-10 69:-8 75:-11 88:40 89:92 97:15 107:-10 125:13
high	0:-10 1:-10 3:-15 8:31 13:-19 15:-8 16:-33 17:153 19:21 23:-8 24:-12 45:27 49:30 51:-10 69:-8 75:-11 88:39 89:91 95:-10 97:15 107:-10 125:13
is high	17:18 45:18 89:-19 125:28
high on	13:-10 17:40 24:-9 89:44
high $	3:-11 8:45 17:62 51:-8 88:27 125:24
off on	13:-10 28:35 29:-22 40:29 69:-13 87:44 108:37 109:-15 110:-9 111:-8 125:53
high of	17:8
off of	17:15
is low	51:39
are high	17:48 24:-9
are low	17:12
fret stand	17:8
stand low	41:-8 92:50
stand==	13:37 14:35 17:42 41:-9
i do	1:21 11:-8 17:57 26:-8 32:-13 33:41 35:-9 61:11 84:13 106:42 110:34 122:24 125:-79
do about	17:69 35:-8
about slot	89:9
what can	0:32 5:-8 16:-10 17:12 22:21 29:-16 33:-9 35:104
do with	1:12 3:-9 17:48 35:-9 125:31
with fret	17:12
about fret	17:16
about it	17:15
with it	3:-9 17:18 28:10 40:15 42:14
that fret	3:15 17:8 42:-8 77:27 97:10
about that	86:9
why==	3:-8 13:27 16:-9 17:29 23:15 24:-37 25:29 29:82 40:28 41:-10 45:-8 48:13 77:21 89:-10 91:15 92:-11 93:-9 113:-14 125:27
why	3:-8 13:27 16:-9 17:29 23:15 24:-37 25:29 29:82 40:28 41:-10 45:-8 48:13 77:21 89:-10 91:15 92:-11 93:-9 113:-14 125:27
^ why	13:29 17:45 24:-29 25:30 29:52 45:-8 89:-9 92:-11 113:-14 125:32
why is	13:30 17:19 29:40 113:-13 125:-18
#n high	17:13 89:48
#n low	17:19 89:41 92:-14
why fret	17:23 92:-8
#r low	17:9
#r high	17:9
#n off	65:28
span==	13:-10 16:-15 17:104 29:-10
come==s	2:-10 5:-9 10:-10 11:-10 13:19 16:8 17:-19 23:-14 27:24 28:-9 29:29 31:9 33:-17 41:18 49:14 50:-11 56:9 59:26 62:20 63:-15 66:15 67:15 73:23 93:17 109:29 110:-18 111:18 113:13 114:27 116:10 117:10 118:40 125:-10
span	13:-10 16:-15 17:104 29:-10
read==ing	17:73 75:-10 89:22 125:10
read	8:16 13:-13 16:-8 17:127 27:-9 29:-14 33:12 50:13 55:34 57:14 75:-10 89:23
which read	17:21
which span	16:-9 17:53
next read	17:54
read of	125:12
next span	17:43
span $	17:35
read for	17:41
read $	17:45 29:-8 89:9
read==	8:17 13:-9 17:54 33:13 57:15
we read	17:13
straightedg==e	13:-10 16:-12 17:56 89:38 97:-9
straightedg	13:-10 16:-12 17:56 89:38 97:-9
the straightedg	13:-9 17:34 89:34 97:-9
rocker==	89:40
rocker	89:40
^ reading	17:35
reading $	17:35
all reading	17:27
count==	0:13 5:-15 13:-9 17:27 39:10 41:-44 45:-24 47:-28 50:16 64:-9 66:68 69:-21 72:75 77:9 78:-17 79:29 80:-40 81:45 82:19 85:-13 88:-14 98:33 99:9 116:41 117:14 120:-14
which reading	13:-8 17:30
count	0:11 1:-8 5:-17 13:-9 17:26 19:-8 31:-14 36:13 41:-45 45:-25 47:-28 50:-17 64:-10 66:167 69:-23 72:72 77:8 78:-17 79:25 80:-41 81:41 82:19 85:-14 88:-16 98:33 99:8 116:31 117:12 120:-14
reading count	17:10
count of	17:14 66:24
reading still	17:20
still count	17:20
count for	17:9
count $	0:16 50:-15 66:63 72:-11
to read	17:38
read on	17:12
level==ing	17:25
stand $	13:63 16:-16 17:12 89:15 92:8
#n stand	14:35 17:26 41:-11 91:22
levell==ing	13:-16 17:75 27:37 48:-8 103:13 107:8 108:40 125:10
levell	0:-9 2:-9 4:-11 13:-26 16:-16 17:58 24:-9 27:34 30:-8 33:48 43:-16 44:-8 45:-10 48:-12 71:-8 75:-13 82:-8 89:-15 91:-8 95:-13 97:245 103:13 104:13 108:35
)~",
R"~(levell of	17:8 107:13
wher the	3:10 7:9 101:-8 102:11
the levell	17:56 107:12 108:-8
levell on	17:-17 33:58 97:-9
the level	17:14
level of	8:-15 9:34 51:19
depth==	18:20 36:-10 49:20 74:36 76:-16 98:-13
width==	0:-32 3:-20 13:47 16:-8 18:26 36:-9 39:-14 41:-32 42:-27 44:-10 46:8 49:27 74:43 76:150 81:-9 85:51 87:-15 88:44 92:-11 98:-22 120:-18
bottom==	74:52 91:18
^ suit	18:69
suit job	18:35
depth	18:20 36:-10 49:20 74:36 76:-16 98:-13
slot depth	18:22 36:-10 74:16 76:-16
depth #d	74:27 76:-16
width	0:-32 3:-20 13:47 16:-8 18:26 36:-9 39:-14 41:-32 42:-27 44:-10 46:8 49:27 74:43 76:150 81:-9 85:51 87:-15 88:44 92:-11 98:-22 120:-18
slot width	3:-11 18:29 42:-19 74:44 76:-32
width #d	0:-19 3:-8 18:29 36:-8 41:-9 42:-20 46:14 49:28 74:33 85:17 88:9 98:-19 120:-14
bottom	18:31 36:-10 74:51 91:141
curv	16:-9 18:18 74:30
&#d#n@job@wire	1:-11 36:8 37:51 38:9 41:-8 81:-11 82:54
suit==	0:-16 1:20 16:-9 18:74
@wire suit	0:-16 1:27 18:28
^ would	0:-27 1:36 3:28 6:9 7:10 11:8 12:10 41:-9 106:10
would @wire	9:15 18:9
slot #d	16:-9 18:27 74:14
wire suit	18:23
will wire	120:11
@wire right	18:32 23:-10
bend==	3:-8 5:-9 13:-9 16:-8 17:-8 18:102 41:59 42:-15 43:17 93:-10 107:12 114:-9
bend	0:-8 2:-8 3:-10 4:-10 5:-12 6:-9 9:-13 11:-11 13:-20 16:-13 17:-14 18:115 23:-18 27:12 29:-10 30:-8 33:-12 41:58 42:-16 43:62 64:-9 75:-8 78:-8 83:-9 84:-10 91:-11 93:-13 98:17 100:37 103:21 104:50 107:75 108:47 114:-14 125:-19
we bend	18:37
bend it	18:45
to for	15:9 18:56 29:-10
@wire to	1:-9 37:15 39:23 68:-8 69:46 80:-10 125:20
bend the	9:-11 18:14 27:26 43:-11 107:42 125:-9
wire to	18:15
i bend	18:18
radius==	3:-9 18:81 23:-10 39:12 41:27 46:82 49:-50 85:29 93:-11 98:-14 125:38
radius	3:-9 18:81 23:-10 39:12 41:27 46:82 49:-50 85:29 93:-11 98:-14 125:38
which radius	18:14
radius do	18:8
bend==ing	9:-12 13:-8 18:14 23:-10 27:11 43:29 91:-11 98:17 100:37 103:25 104:43 107:53 108:52 125:-16
what bend	18:48
bend radius	18:62 23:-9 41:57 42:-15 93:-10
radius for	18:46
radius of	18:8 41:-8 42:18 85:10
which bend	18:15
lot==s	2:9 5:-9 8:-23 9:-12 19:188
lot	1:13 3:-8 4:-8 6:-9 8:-30 9:-14 11:-10 13:-18 14:-8 16:-13 17:-10 19:201 20:-13 22:-8 25:-9 29:-10 32:-10 33:-9 37:-18 38:-8 39:10 43:-16 44:25 48:-8 65:-11 71:25 73:213 79:-9 83:38 84:61 89:-8 93:-9 96:-8 108:-11 113:-15 114:-18 125:16
^ lot	19:62 73:49
lot wire	19:8
lot the	19:9
pay==	19:37
pay	19:37
we pay	19:37
pay for	19:37
the last	4:16 19:20 33:37 44:-8 45:49 89:-27 92:13 93:94 124:60 125:-15
last @wire	19:20
for last	20:20
much did	19:19
did @wire	20:17
much doe	9:-16 19:35 27:-20 125:58
pric==e	8:-26 9:-13 19:103 20:-10 23:-11 39:-11 50:24 116:-9 117:14 119:14
pric	8:-26 9:-13 19:103 20:-10 23:-11 39:-11 50:24 116:-9 117:14 119:14
the pric	8:-25 9:-13 19:69 117:-11 119:14
pric of	8:-25 9:-13 19:69 117:12
what lot	8:-10 19:20
lot of	2:10 5:-8 8:-20 19:80
which lot	19:53
the lot	5:16 7:10 19:13 23:19 44:33 66:8 73:-14 81:9 83:38 84:49
delivery==es	8:-18 9:-13 11:-9 19:186 23:-11 31:27
delivery	5:-13 8:-21 9:-19 10:-13 12:-8 13:-10 14:-10 19:226 20:-8 23:-13 25:-9 28:-17 29:-28 30:22 31:82 33:-10 35:-10 39:8 50:26 66:-22 73:140 114:-8 117:48 118:9 121:-11 125:-12
what delivery	19:38
delivery of	8:-13 19:54 50:17 116:-8
which delivery	8:-8 19:27 23:-8 31:35
delivery $	9:-13 19:92 29:-14 31:24
were ther	19:11
@wire did	21:9
balanc==e	8:-8 9:-12 20:213 21:-12 67:17 68:10 118:-10
year==	7:-8 9:-11 19:-13 20:54 21:69 22:9 61:8 62:-12 65:12 106:-9 112:11 119:35 121:24 125:23
balanc	8:-8 9:-12 20:213 21:-12 67:17 68:10 118:-10
^ balanc	20:88
balanc from	20:34 67:10
from @day	11:30 28:42 29:27 52:-29 101:12 109:-21 110:16 111:-10
@day until	20:11 54:12 101:10
@day wire	20:-12 21:12
@wire month	46:-10
all_tim	20:22
february	21:14
year	7:-8 9:-11 19:-13 20:54 21:68 22:9 61:8 62:-12 65:12 101:9 106:-10 112:10 119:34 121:24 125:23
year #n	20:-14 21:14
from tomorrow	29:8 110:17
last_year	21:14
july	21:19
this_month	21:8
january	20:13 47:17 53:18 110:29
@wire year	20:-11 21:14
#c wire	81:11
june	21:15
august	20:77 21:8
from today	20:14 28:19 53:-9 61:21 99:11
october	20:92 21:14
september	5:-10 20:48 21:43
november	8:-13 11:17 20:80 21:52 33:15 45:-13 115:23
from next	20:13 29:9 67:10
this_year	21:17
&#n@day@wire	116:24
month may	21:8
last_month	20:15 21:15
&#c@wire	5:58 8:-24 9:-15 19:-13 20:8 21:-10 22:-9 31:-13 39:19 50:66 51:32 60:-10 66:22 67:67 68:-51 69:38 79:28 116:34 117:-19 118:-10 125:-10
last_month $	20:17
balanc of	20:58
@wire over	21:9
january $	20:11 47:17 53:18 110:29 111:-13
all_tim $	20:20
the balanc	20:56 67:8
august $	20:32
balanc for	20:46
book==s	12:13 14:9 20:133 26:-11 66:-12 69:18 86:8 106:-11 125:-8
book	0:-15 1:-9 8:-8 9:-8 11:-26 13:-23 15:-9 16:-16 17:-10 20:126 22:-9 23:-21 25:16 26:242 27:-9 28:-16 29:-46 30:-13 31:-8 33:-30 35:15 37:-11 38:-9 40:-9 47:-10 48:-14 65:-9 66:-13 69:15 84:-11 99:-9 100:-14 101:-13 103:-10 105:104 106:187 108:-10 110:-9 111:-12 125:59
the book	12:12 14:8 20:61 26:10 35:12 49:8 66:-11 69:18 86:8 106:22 125:-11
book of	20:59 26:-14 106:45 125:-8
march	20:24
march $	20:24
^ book	20:69 26:-20 105:100 106:52 125:-13
october #n	20:38
october $	20:19 33:13
book for	13:-11 20:19 23:-11 26:84 49:8 106:19
for may	20:19
may #c	20:19 21:10
september #n	20:13
go over	20:15 87:11
over $	16:18 20:9 21:20 43:17
go in	0:23 1:-10 20:24 29:8 40:-11 81:24 82:18
in june	21:8
did all	20:12
june #n	21:8
wire go	20:23
@day to	11:30 29:30 52:34 53:-11 54:-29 109:39 111:-25
to tomorrow	115:12 118:11
&@day@wire	118:76
today to	20:14 28:28 53:-8
to next	20:17 118:10
december to	28:23 53:14 101:12 110:34 111:-21
to @day	11:29 29:21 47:10 52:22 53:-15 54:-29 101:11 109:37 111:-26 115:11 118:37 125:-9
&#o@day	20:10 30:28 34:8 47:-15 111:20 112:-17
december until	28:9
until #r	28:11
&#o#r	28:9 54:15 110:10
#o until	54:8 110:17
tomorrow to	105:-9 115:10
to #r	11:-9 28:22 29:8 45:19 47:12 53:-8 75:35 89:-8 118:11
&#r@wire	20:34 118:14
sav==ed	8:-24 9:-10 19:-12 20:-13 21:198 22:-9 33:-11 38:9 83:8 84:13
sinc==e	0:-13 5:-9 11:-9 20:-28 21:94 29:-12 33:102 34:83 37:13 42:9 43:-18 45:25 47:-11 95:-11 96:8 101:27 107:58 108:12 118:-8 125:-25
sav	1:-9 4:-8 8:-24 9:-11 19:-13 20:-13 21:196 22:-10 33:-11 38:8 40:9 61:18 83:8 84:13 103:19 118:9 125:-8
^ sav	20:-9 21:91 103:20
sinc	0:-13 5:-9 11:-9 20:-28 21:94 29:-12 33:102 34:83 37:13 42:9 43:-18 45:25 47:-11 95:-11 96:8 101:27 107:58 108:12 118:-8 125:-25
sinc @day	20:-13 21:14 33:70 34:29 107:10
@wire sinc	20:-12 21:8 33:29
#n until	45:11 52:19 71:10 81:11 89:10 105:10 109:11 111:-13 115:9
until tomorrow	47:8 54:8 101:30
sav @wire	21:8
tin sav	21:31
sav of	21:21
us==	5:-11 9:13 11:-9 12:-9 13:-18 15:18 17:13 20:-12 21:73 22:-16 23:-12 25:-8 27:14 28:-9 29:9 31:23 32:18 33:-20 35:8 45:8 50:24 52:8 58:29 62:42 63:50 79:-8 89:-8 98:-18 100:17 104:26 109:-13 110:-18 116:18 117:32 118:14 119:-9 120:14
us	5:-11 9:13 11:-9 12:-9 13:-18 15:18 17:13 20:-12 21:73 22:-16 23:-12 25:-8 27:14 28:-9 29:9 31:23 32:18 33:-20 35:8 45:8 50:24 52:8 58:29 62:42 63:50 79:-8 89:-8 98:-18 100:17 104:26 109:-13 110:-18 116:18 117:32 118:14 119:-9 120:14
sav us	21:12
us $	5:-10 8:-13 9:17 10:11 21:39 27:24 29:-8 31:33 32:-17 58:15 62:15 100:8
save==	0:-17 2:25 8:-21 19:-12 20:-8 21:82 33:-9 36:-17 37:50 38:23 125:-8
save	0:-17 2:25 8:-21 19:-12 20:-8 21:82 33:-9 36:-17 37:50 38:23 125:-8
tin save	8:-8 21:39
save $	21:9
february $	21:9
this_year $	21:11
sav for	38:10 83:9 84:13
sav sinc	21:21
save us	21:26
sinc #r	21:14 34:15
sinc tomorrow	107:8
save of	8:-12 21:16
sinc today	34:12
money==	21:58 48:18
money	21:58 48:18
much money	21:11
wire did	8:-9 19:-9 21:33
much have	8:-11 21:36
november $	11:21 20:37 21:55
we save	2:10 8:-11 21:24
sinc september	21:12
september $	21:12
money has	21:9
was sav	21:22
scrap==ped	5:-9 20:22 21:25 40:31
scrap	0:-15 3:-21 5:-11 8:-19 20:15 21:119 22:75 23:-12 27:-9 29:-17 33:-10 35:-10 36:-14 37:-8 38:-16 39:-8 40:139 42:-8 53:-9 69:-8 78:45 81:152 82:-26 95:11 96:-12 98:-17 100:18 112:35
is scrap	21:14 40:33
much is	13:-13 23:15 27:17
thrown==	21:15 22:-9 40:15 79:19 81:11 121:14
)~",
R"~(away==	2:17 8:-9 11:-12 13:-14 16:-10 21:17 22:26 23:32 27:-9 28:16 29:-15 30:-8 31:19 32:-10 33:-11 36:-9 40:68 43:-8 47:24 60:31 61:-8 62:-10 81:27 86:18 100:55 103:-9 108:-8 109:-11 110:58 111:-14 122:10 124:12
what was	11:-20 19:-12 21:32 29:-10 33:97 34:26 38:-9 104:53 123:16 124:-19
thrown	21:15 22:-9 40:15 79:19 81:11 121:14
away	2:17 8:-9 11:-12 13:-14 16:-10 21:17 22:26 23:32 27:-9 28:16 29:-15 30:-8 31:19 32:-10 33:-11 36:-9 40:68 43:-8 47:24 60:31 61:-8 62:-10 81:27 86:18 100:55 103:-9 108:-8 109:-11 110:58 111:-14 122:10 124:12
thrown away	21:15 81:12
away $	21:15 22:29 28:31 38:-8 40:77 60:17 86:8 125:-9
we sav	8:-16 21:31
sav $	21:10 61:18
worth==	10:17 21:71 22:-10 40:24 89:19 95:-9 125:-9
troubl==e	21:16
worth	10:17 21:71 22:-10 40:24 89:19 95:-9 125:-9
tin worth	21:71 22:-10
worth the	21:21
troubl	21:16
the troubl	21:16
troubl $	21:16
keep==ing	21:22 23:52 54:12 84:15
keep	0:-17 1:-15 3:12 4:-8 5:-8 8:-9 9:-11 11:-13 13:-8 14:8 16:-8 17:-8 20:-10 21:21 22:-8 23:80 25:-9 26:-8 28:-15 29:13 30:13 32:42 33:-13 35:-15 36:-28 37:92 38:-29 40:10 45:-10 51:-17 52:18 54:9 65:-9 83:61 87:8 91:35 105:21 106:-22 111:-14 119:14 121:-10 125:92
worth keep	21:10
keep $	3:25 21:9 23:54
worth it	21:11
saving==s	20:-10 21:170 22:-10
saving	20:-10 21:170 22:-10
^ saving	21:93
saving in	21:19
saving for	21:26
for last_year	21:14
saving $	21:19
throw==	8:-15 22:71 40:71 81:37
throw	8:-15 22:71 40:71 81:37
we throw	8:-10 22:33
throw away	8:-8 22:29 81:20 125:15
wast==e	0:18 1:21 21:18 40:15 81:11 125:-11
wast	0:18 1:20 5:18 8:-9 21:28 40:15 81:11 125:-13
we wast	21:17
wast $	0:16 5:19 40:16 81:11
scrap==	0:-11 3:-11 8:-13 21:94 22:80 23:-10 29:-13 33:-8 35:-8 36:-12 38:-15 39:-8 40:108 53:-9 78:18 81:152 82:-25 95:11 96:-11 98:-16 100:20 112:36 125:-40
have i	8:-8 9:-13 11:-20 21:13 26:24 29:-17 31:31 33:82 70:-9 82:12 95:27 97:8
i scrap	22:67 40:-21 125:-27
scrap $	0:-10 1:24 3:-8 5:-9 20:22 21:18 40:46 78:19 81:34
we scrap	21:11
may #n	17:13
wast==ed	5:22 21:10
much scrap	8:-10 21:63
we make	2:10 5:8 115:19
scrap is	21:18
ther in	25:18
november #n	20:9
scrap for	21:16
worth to	21:10
to us	9:-12 19:10 21:17 31:35 50:14 118:12
worth $	10:17 21:18 89:20 95:-9
^ has	8:11 9:-12 20:-11 21:-8 26:45 31:52 33:78 77:-26 125:-16
any money	21:15
^ did	1:-12 11:-8 13:-9 17:49 19:15 20:-9 21:9 23:47 24:51 26:48 31:56 33:30 36:-12 37:-8 38:-10 40:-12 44:28 75:-8 83:-15 84:-9 89:-9 90:-16 95:-8 97:13 106:-11 117:-15 124:14 125:-8
us any	21:15
care==	22:29 47:15 48:-9
^ tin	0:46 1:-11 5:16 8:-15 13:-8 22:78 39:23
care	22:29 47:15 48:-9
tin care	22:29
@wire day	22:11
care $	22:15
lie==	4:19 8:13 11:11 15:16 22:31 75:14
lie	3:14 4:9 8:32 11:10 13:-8 15:15 22:52 67:9 72:-11 75:18 87:24 89:24 92:19 94:-9
@wire lie	7:8 8:17 22:19
lie about	8:-9 22:43 92:8
about $	0:19 8:-12 22:31
lying==	0:23 8:20 22:24 125:9
lying	0:23 8:20 22:24 125:9
are lying	22:11
lying about	0:20
idle==	22:69 55:19
idle	22:69 55:19
idle $	22:10
lain==	22:17
lain	22:17
have lain	22:17
piece lie	22:13
no==	0:19 1:-30 2:-12 3:-13 4:-20 6:-11 8:29 9:-24 10:-10 11:-36 12:-10 13:-27 14:-13 16:49 17:-23 18:-11 19:-10 20:-9 21:-11 22:32 23:-36 25:-32 26:-26 27:-12 28:-32 29:-32 30:-20 31:-16 32:-19 33:-19 35:-16 37:37 38:48 40:40 41:-10 43:-23 44:-14 45:-21 47:77 50:17 52:22 53:31 54:-15 55:-18 57:23 58:-11 62:36 63:-11 64:-15 65:33 66:-9 69:-9 70:19 71:-9 77:-21 78:-14 83:-20 84:16 86:27 87:63 89:45 90:38 91:10 92:-10 93:73 94:-8 95:-15 96:-9 97:-27 99:24 100:73 101:81 103:-21 104:-9 105:-22 106:36 107:-19 108:-20 109:31 111:-18 112:-23 113:33 114:20 115:-10 116:-11 117:-10 118:-13 119:-13 121:17 122:60 124:46 125:37
no	0:19 1:-30 2:-12 3:-13 4:-20 6:-11 8:29 9:-24 10:-10 11:-36 12:-10 13:-27 14:-13 16:49 17:-23 18:-11 19:-10 20:-9 21:-11 22:32 23:-36 25:-32 26:-26 27:-12 28:-32 29:-32 30:-20 31:-16 32:-19 33:-19 35:-16 37:37 38:48 40:40 41:-10 43:-23 44:-14 45:-21 47:77 50:17 52:22 53:31 54:-15 55:-18 57:23 58:-11 62:36 63:-11 64:-15 65:33 66:-9 69:-9 70:19 71:-9 77:-21 78:-14 83:-20 84:16 86:27 87:63 89:45 90:38 91:10 92:-10 93:73 94:-8 95:-15 96:-9 97:-27 99:24 100:73 101:81 103:-21 104:-9 105:-22 106:36 107:-19 108:-20 109:31 111:-18 112:-23 113:33 114:20 115:-10 116:-11 117:-10 118:-13 119:-13 121:17 122:60 124:46 125:37
is no	8:-9 22:31 38:18 40:62 47:18 62:16 65:-10 73:12 87:31 90:19 91:-9 99:-11 100:27 112:-8 113:18 114:18
no use	1:-11 8:-11 22:55 39:9 40:20 81:10
use $	8:-13 22:57 36:37 40:19 86:31 101:-8 125:15
what in	8:-15 22:53
tin is	0:20 8:-8 22:20
is of	22:21
of no	22:21
what of	11:25 22:20 29:-23
@wire can	5:18 8:-8 9:-10 22:12 40:-10 81:32
throw out	22:45 40:8 81:21
@wire could	0:22 39:-8
i throw	22:8
sort==	8:-8 9:11 11:9 22:38
sort	8:-11 9:11 11:8 22:35 35:22
^ sort	8:-8 22:38
sort out	22:8
out the	4:8 8:15 14:16 22:14 27:15 107:10
tin of	22:30
tidy==	22:41
tidy	22:41
^ tidy	22:22
tidy the	22:33
clean==	22:32 39:22 43:10
clean	4:-41 13:-12 22:54 27:13 39:22 43:108 74:-11 77:19 107:25 108:-11
^ clean	22:32
clean out	22:16 27:16 107:11
clear==	5:-12 22:42 34:-28 87:63 115:18 123:59 125:-12
clear	5:-12 22:42 34:-28 87:63 115:18 123:59 125:-12
^ clear	34:-28 123:59
clear out	5:-12 22:46
sort the	22:20
nobody==	0:-17 1:-20 11:-9 13:-15 15:-13 17:-10 19:-10 21:-10 22:78 23:-11 29:-11 33:-35 34:66 35:-9 37:25 38:46 39:-9 43:-8 47:-8 48:-8 50:-8 52:-10 53:43 55:11 57:10 59:-16 60:69 64:-9 65:162 66:-11 69:14 77:-8 79:8 80:8 81:8 83:13 86:21 87:-9 93:-8 101:15 103:-9 113:-15 114:-9 123:19 125:10
@wire has	21:13 22:10 50:-13 80:8 88:18 116:9 117:10 125:20
nobody	0:-17 1:-20 11:-9 13:-15 15:-13 17:-10 19:-10 21:-10 22:78 23:-11 29:-11 33:-35 34:66 35:-9 37:25 38:46 39:-9 43:-8 47:-8 48:-8 50:-8 52:-10 53:43 55:11 57:10 59:-16 60:69 64:-9 65:162 66:-11 69:14 77:-8 79:8 80:8 81:8 83:13 86:21 87:-9 93:-8 101:15 103:-9 113:-15 114:-9 123:19 125:10
has nobody	22:31
nobody used	22:21 125:33
used for	25:10 84:11
touch==	37:19 101:21 125:-8
touch	5:19 9:-9 20:-11 21:-13 22:50 33:21 37:19 87:35 101:21 125:-10
nobody touch	22:27 37:19
touch in	22:37
piece did	8:21
did nobody	33:-14 34:55
touch==ed	20:-10 21:-12 22:44 33:22
been==	0:-16 2:-8 4:-11 13:-16 14:9 15:20 16:-9 17:9 18:-8 22:23 23:42 27:-8 29:-8 33:49 35:15 36:10 41:-12 42:-10 45:-9 47:-8 61:16 64:18 65:-8 71:-10 72:-10 75:17 77:-15 78:36 82:-15 83:-9 84:17 85:15 94:12 98:9 101:15 104:8 108:23 125:20
been	0:-16 2:-8 4:-11 13:-16 14:9 15:20 16:-9 17:9 18:-8 22:23 23:42 27:-8 29:-8 33:49 35:15 36:10 41:-12 42:-10 45:-9 47:-8 61:16 64:18 65:-8 71:-10 72:-10 75:17 77:-15 78:36 82:-15 83:-9 84:17 85:15 94:12 98:9 101:15 104:8 108:23 125:20
has been	0:-8 22:16 36:12 41:-9 70:9 72:-9 77:12 78:39 82:-10 87:9 94:11 104:10 107:16 108:34 116:9
been in	91:10
tin too	2:17
long $	3:22 4:13 27:22 41:17 66:8 69:30
sort through	22:10
through the	0:23 9:21 21:8 22:9 39:-19 44:24 80:14
up the	22:34 24:13 53:8 65:21 99:20
clean up	22:27
board==	0:-13 2:-10 5:-9 10:-14 11:-8 13:-16 16:-17 17:-16 27:71 29:-17 30:65 35:-12 36:-10 41:-26 42:-8 43:64 44:-17 45:-15 47:-13 57:14 58:-13 71:-9 74:14 76:112 77:-9 78:-15 87:81 89:-21 90:85 91:9 92:-15 93:39 103:16 107:18 108:13 113:-10 124:-8 125:-20
is too	22:25 41:-11 42:32 77:-9 91:45
too short	0:-18 2:8 3:25 5:-11 11:-9 22:63 23:-8 40:35 41:-13 42:35 72:-8 75:-8 77:-8 81:15 125:34
for any	22:20 65:17
board	0:-13 2:-10 5:-9 10:-14 11:-8 13:-16 16:-17 17:-16 27:71 29:-18 30:64 35:-12 36:-10 41:-26 42:-8 43:64 44:-17 45:-15 47:-13 57:14 58:-13 71:-9 74:14 76:112 77:-10 78:-15 87:80 89:-21 90:85 91:9 92:-15 93:39 103:31 107:18 108:13 113:-10 124:-8 125:-20
any board	22:9
board $	22:9 27:40 30:15 74:11 87:-8 90:62
for anyth	22:24 40:14 114:27
are too	2:9 5:-8 22:19
piece are	23:25
week==s	0:-10 9:12 10:15 11:64 22:26 28:9 29:51 63:11 117:-12 120:16 121:68
month==s	22:17 84:11
age==s	22:16
age	22:16
used age	22:16
age $	22:16
in month	22:10
nobody has	22:30 57:15
to throw	1:14 22:25
anyth to	22:21
ther any	8:9 25:-9 26:21
that i	32:12 35:11 39:12
i can	0:-8 1:-8 5:-8 8:10 17:-9 18:13 23:17 24:9 65:25 77:27 81:12 90:31 101:22 110:20 111:10 122:10 125:-37
)~",
R"~(tin i	0:11 7:10 125:-9
i should	0:9 37:16 64:12 119:10
should throw	125:17
anyth i	11:18
i could	25:13 29:20 108:16
we could	125:31
we can	16:-10 30:8 68:15 77:13 101:11 102:22 106:10 120:58 121:10 122:-12 125:11
that we	2:10 5:10 11:18 23:-8 53:-14 84:21 112:28
we should	86:-8 115:-18 125:45
held==	8:-16 13:-15 17:-10 18:-8 23:184 29:-13 38:46 41:14 70:10 75:-11 84:56 89:64 90:-20
held	8:-16 13:-15 17:-10 18:-8 23:184 29:-13 38:46 41:14 70:10 75:-11 84:56 89:64 90:-20
^ held	23:91 89:25
held $	23:80 38:24 125:-14
held the	23:14 41:15
is held	8:-12 23:28 84:58 125:18
held for	84:59 125:18
set==	0:-9 1:-8 8:-11 9:-8 11:-33 13:-14 16:-8 17:-8 23:88 27:-8 29:-9 33:-9 45:-8 47:51 51:9 55:97 68:8 73:-13 83:91 84:33 87:43 98:15 99:46 104:56 105:-14 125:12
asid==e	8:-11 13:-8 23:88 33:11 37:-9 83:123 84:45
what all	10:11 23:8 29:-14 33:52
set	0:-9 1:-8 8:-12 9:-8 11:-37 13:-14 16:-9 17:-9 19:-8 22:-10 23:87 27:-8 29:-10 30:-8 33:-9 44:-8 45:-10 47:50 51:9 55:153 60:-8 65:-8 68:8 73:-13 83:90 84:33 87:42 98:14 99:92 101:-8 102:-8 104:42 105:-15 108:-8 125:9
is set	23:22 83:-9
asid	8:-11 13:-8 23:88 33:11 37:-9 83:123 84:45
set asid	8:-10 23:81 83:45 84:60
asid for	23:38 33:14 83:-18 84:39
reserv==ed	1:-9 8:-26 11:-8 19:-12 23:133 25:-24 26:136 29:-23 33:-19 37:12 84:33 105:12
reserv	0:-20 1:-12 5:-9 8:-27 9:-8 11:-13 13:-14 16:-13 19:-12 23:117 25:-24 26:132 27:-10 29:-14 33:-21 36:-25 37:109 38:-8 43:-11 73:-12 83:75 84:49 105:50 111:-8 125:-9
is reserv	8:-23 23:53 25:-11 26:22 29:-11 84:39 105:15
reserv $	8:-10 23:43 25:-22 26:82 29:-10
reserv for	23:8 26:13 37:29 84:37
kept==	0:-9 1:-15 13:-12 23:71 37:27 38:20 78:9 83:19 125:-10
kept	0:-9 1:-15 13:-12 23:71 37:27 38:20 78:9 83:19 125:-10
is kept	13:-11 23:34 37:13
kept for	1:-13 13:-12 23:71 37:13 38:9 83:19
and for	13:-8 17:-8 19:23 23:127 26:8 29:12 83:-20 84:-8
who $	14:-12 15:22 28:26 125:-10
for which	5:8 11:22 29:17
and $	23:8
asid $	23:38 83:66 84:-8
you==	1:-30 2:-9 3:10 5:-19 10:14 11:-14 12:-9 13:26 16:-15 17:-9 22:-10 23:45 24:11 25:-9 26:8 29:-27 30:-18 31:-8 33:10 34:25 35:42 37:25 38:18 43:-11 45:9 53:8 59:-12 60:12 74:-8 89:-9 90:17 99:21 100:-8 101:-17 102:16 108:-8 113:17 114:28 121:13 123:37 124:15 125:17
you	1:-30 2:-9 3:10 5:-19 10:14 11:-14 12:-9 13:26 16:-15 17:-9 22:-10 23:45 24:11 25:-9 26:8 29:-27 30:-18 31:-8 33:10 34:25 35:42 37:25 38:18 43:-11 45:9 53:8 59:-12 60:12 74:-8 89:-9 90:17 99:21 100:-8 101:-17 102:16 108:-8 113:17 114:28 121:13 123:37 124:15 125:17
do you	9:14 10:-13 23:12 24:13 27:21 33:15 125:9
hold==	0:-16 1:-17 3:-15 5:-14 13:-11 18:54 23:21 25:-9 27:-14 29:-19 33:-10 35:45 36:-43 37:124 38:55 40:-10 43:-12 83:78 84:25 89:24 90:-8 113:-8 114:17 121:10 122:9
hold	0:-21 1:-29 3:-17 4:-11 5:-18 6:-9 11:-20 13:-17 14:-14 16:-14 17:-9 18:51 19:-8 22:-8 23:149 25:-14 26:-9 27:-17 28:-10 29:41 32:-10 33:-21 35:34 36:-50 37:109 38:84 40:-24 43:-27 45:-8 48:-9 50:-9 66:9 70:-8 74:-8 83:60 84:110 87:-8 89:50 90:-21 91:23 100:-8 108:-10 113:-10 114:15 121:9 125:21
you hold	23:21
hold for	23:37 84:19
we hold	8:10 23:40 30:10
hold==ing	1:-11 23:23 37:-14 38:31 40:-13 69:10 84:20 89:28 90:-11 91:9 125:31
we keep	23:24 29:22 30:17
are you	23:37
you keep	23:29
reserv of	8:-11 23:25
asid of	23:11
held of	23:11
are reserv	26:14
are held	23:9
has #d	23:15 80:22
reserv #d	23:9 37:10
has piece	15:-13 23:41 33:-11
has #n	23:15 30:9
hold==s	11:-10 14:-8 17:-11 23:106 29:54 35:-10 43:-14 66:11 83:-12 84:66 91:11
hold #d	23:12 37:13
@wire held	23:20
#n held	23:32
#n free	23:14 38:18
taken==	23:15 26:46 41:-8 72:19 75:-10 95:18 104:23
taken	23:15 26:46 41:-8 72:19 75:-10 95:18 104:23
taken $	23:16
anyth held	23:9
anyth set	23:20 83:-12
much of	23:20
of is	23:16
spring==	8:-11 17:-8 23:11 24:143 33:-8 45:18 65:14 75:-11 125:49
back==	0:-13 1:-12 2:-10 3:-11 4:-11 5:-10 8:-9 9:-11 11:-18 12:-8 13:-23 14:-8 15:-8 16:-21 17:-27 18:-8 22:-9 24:130 26:-15 27:-11 28:-15 29:-26 31:-10 32:-8 33:-22 35:17 36:-18 37:26 38:58 40:-14 41:19 43:-23 44:-14 45:95 48:-9 52:-10 53:-18 55:-10 57:-8 60:-8 61:-16 62:-15 63:139 64:-12 65:-15 72:23 75:-19 77:-11 78:-8 83:-11 84:32 87:10 90:-9 91:-13 92:-9 93:-9 94:20 95:17 96:-17 97:-14 99:-18 100:-10 101:23 102:115 103:-9 104:-9 105:-10 106:38 107:61 108:-9 110:-20 111:-10 112:30 114:19 115:-11 124:89 125:20
stay==	1:-11 3:41 18:-8 24:41 52:18 53:-9 54:33 63:10 91:9 101:-11 102:36
interval==	24:34
spring	8:-12 9:-9 17:-8 23:10 24:161 33:-8 45:18 65:14 75:-11 125:48
^ spring	5:10 24:65 45:25 75:-10
back	0:-14 1:-12 2:-10 3:-11 4:-11 5:-10 8:-9 9:-11 11:-18 12:-8 13:-24 14:-8 15:-8 16:-21 17:-28 18:-9 22:-9 24:145 26:-15 27:-11 28:-15 29:-27 31:-10 32:-8 33:-23 35:16 36:-18 37:26 38:58 40:-14 41:19 43:-24 44:-14 45:94 48:-9 52:-10 53:-18 55:-10 57:-8 60:-8 61:-16 62:-15 63:139 64:-13 65:-15 72:23 75:-19 77:-11 78:-8 83:-11 84:32 87:9 90:-9 91:-13 92:-9 93:-9 94:20 95:16 96:-17 97:-14 99:-18 100:-10 101:23 102:115 103:-9 104:-9 105:-10 106:38 107:57 108:-9 110:-20 111:-10 112:30 114:18 115:-11 124:89 125:20
spring back	24:72 45:-8 125:54
back job	24:11
stay	1:-12 3:40 5:-8 9:-8 18:-8 24:74 25:-17 45:15 52:17 53:-10 54:32 62:-14 85:10 91:20 102:56 110:-12 125:25
stay ~	24:8
by load	24:60
interval	24:34
interval ~	24:8
#n stay	91:10
back the	124:31
by mm	24:11
sprang==	1:-8 13:-13 16:-11 17:-10 24:140 27:-8 33:-15 45:126 46:10 75:-11 89:-18 95:-9 102:-8 125:8
sprang	1:-8 13:-13 16:-11 17:-10 24:140 27:-8 33:-15 45:126 46:10 75:-11 89:-18 95:-9 102:-8 125:8
what sprang	24:75 125:-9
sprang on	24:92
sprang of	24:36
sprang back	45:48 89:-8 102:-8 125:12
back in	25:-10 38:19 39:9 63:22 95:36 96:-11 102:21
back of	24:14 87:19
back on	24:36 45:41 63:36 75:-10 89:-8 125:-13
fret sprang	24:26
did anyth	24:42
anyth spring	24:33
spring in	24:15
anyth sprang	24:17
often==	24:34
often	24:34
how often	24:29
@wire spring	24:29
back with	63:11
with an	24:14
an interval	24:14
interval $	24:27
wire spring	24:11
the interval	24:13
spring with	24:16
often doe	24:24
fret spring	24:-10 125:60
back $	11:-8 17:-12 24:38 25:22 29:-12 41:10 45:11 63:48 89:-8 101:-29 102:87 124:75 125:-16
spring $	24:21
doe fret	17:32 24:9
do anyth	24:11 33:30
do someth	99:12
sure==	8:-14 17:-9 24:69 61:11 89:17
sure	8:-14 17:-9 24:69 61:11 89:17
how sure	8:-14 24:70
sure is	8:-14 24:69
that $	0:51 18:9 24:32 30:-8 35:-17 53:12 55:18 59:16 112:-11 125:71
that of	8:-12 24:28 75:8
the spring	24:19
@wire with	8:-15 19:21 21:28 23:-8 39:9 50:9 68:19
back by	24:15
mm==	0:29 2:-21 3:13 4:-16 6:-13 7:34 8:20 9:-9 16:91 17:-20 18:13 19:-8 20:-15 22:-14 23:-10 24:8 27:-9 31:-8 33:-8 36:-14 37:-11 38:13 39:28 40:-20 41:21 42:42 43:-13 44:-15 45:-12 46:28 49:56 50:-21 51:13 55:112 67:-22 68:28 69:48 70:-22 72:8 75:-14 76:28 77:-14 78:-30 79:-21 80:-11 81:-8 82:-15 84:-10 85:53 86:-9 87:21 88:44 89:-15 90:-8 91:-10 92:44 93:-10 95:-9 97:-10 107:-8 117:16 120:-13 125:-26
for each	0:-19 4:30 27:19
per mm	24:11
down==	1:-12 2:-8 3:-11 4:-12 5:-12 9:-12 13:-14 17:-27 23:-9 24:62 25:47 26:22 27:-10 28:-8 29:-20 30:-9 33:-15 36:-16 37:-8 38:-12 40:-13 42:-17 43:-19 44:74 45:-8 47:-8 50:-9 51:33 52:-8 53:-8 55:21 58:11 62:9 69:16 70:-10 71:-8 75:20 82:-15 85:12 87:-13 89:59 90:24 92:52 93:-13 95:-14 96:45 97:99 99:-11 100:-10 101:47 102:-20 106:-9 107:-8 108:23 115:-12 116:-9 117:-8 125:69
^ from	5:52 21:-17 22:-9 24:17 27:8 28:-12 29:14 38:22 40:-9 50:28 52:9 54:-12 55:24 58:39 70:-12 72:9 73:34 78:-8 82:28 101:26 110:16 118:-9 121:-8 122:8 125:-11
from which	0:16 5:32 24:17 32:20 39:-8 51:21
fret stay	24:26
down	1:-12 2:-8 3:-11 4:-12 5:-12 9:-12 13:-14 17:-27 23:-9 24:62 25:47 26:22 27:-10 28:-8 29:-20 30:-9 33:-15 36:-16 37:-8 38:-12 40:-13 42:-17 43:-19 44:74 45:-8 47:-9 48:-10 50:-9 51:33 52:-8 53:-8 55:21 58:11 62:9 69:16 70:-10 71:-8 75:20 82:-15 85:12 87:-14 89:59 90:24 92:52 93:-14 95:-14 96:45 97:99 99:-11 100:-10 101:47 102:-20 106:-9 107:-9 108:40 115:-13 116:-9 117:-8 119:-8 125:64
stay down	24:31 45:10
down $	9:-10 24:59 25:64 26:-10 29:-8 44:49 45:17 51:27 69:15 77:-9 89:-13 91:8 92:-10 96:15 97:30 102:-8 125:15
)~",
R"~(down with	16:-12 44:11 69:11 97:34
they==	0:-12 1:-10 4:26 5:-8 10:-12 13:-8 14:10 17:-13 25:31 31:-8 32:48 33:-8 39:-8 41:14 45:12 50:-9 54:11 64:10 70:8 72:18 75:17 95:8 96:-13 98:-8 113:19 116:33 117:-9 119:30 120:32 122:12 125:-9
^ at	4:20 9:14 13:-13 15:27 24:33 26:-8 29:15 43:-8 50:-8 53:22 115:12 116:16 119:14
at which	1:10 4:20 10:11 13:-12 15:26 24:18 25:10 26:-8 29:10
on do	24:9
they	0:-12 1:-10 4:26 5:-8 10:-12 13:-8 14:10 17:-13 25:31 31:-8 32:48 33:-8 39:-8 41:14 45:12 50:-9 54:11 64:10 70:8 72:18 75:17 95:8 96:-13 98:-8 113:19 116:33 117:-9 119:30 120:32 122:12 125:-9
do they	4:20 25:18
from what	5:45 8:-12 19:-14 24:23
load hold	24:8
@wire down	24:10
keep==s	24:9 29:12 87:10 91:33 124:8
load keep	24:9
keep the	30:18 51:-17 54:12 125:38
hold the	37:-9 91:9 125:36
keep fret	91:21
fret down	2:-8 16:24
machine==s	0:-12 8:-16 9:-9 11:-19 12:-14 14:-21 23:-10 25:198 26:43 28:-10 29:68 32:-14 57:-10 98:58 99:-8 100:69 102:-9 106:-8 125:-14
machin==e	11:-21 12:-10 14:-12 23:-9 25:12 26:83 27:-8 28:-15 29:44 30:-10 46:-9 49:-15 55:-12 56:-8 57:-15 58:-27 59:12 61:-12 64:-10 85:-9 86:-9 98:163 99:43 100:133 101:31 102:79 103:56 104:-10 105:20 108:-9 111:-34 120:-12 122:-12 124:-8 125:-22
machine	0:-12 8:-16 9:-9 11:-19 12:-14 14:-21 23:-10 25:198 26:43 28:-10 29:68 32:-14 57:-10 98:58 99:-8 100:69 102:-9 106:-8 125:-14
^ machine	25:67 100:-13
machin	11:-21 12:-10 14:-12 23:-9 25:12 26:83 27:-8 28:-15 29:44 30:-10 46:-9 49:-15 55:-12 56:-8 57:-15 58:-27 59:12 61:-12 64:-10 85:-9 86:-9 98:163 99:43 100:133 101:31 102:79 103:56 104:-10 105:20 108:-9 111:-34 120:-12 122:-12 124:-8 125:-22
machine machin	25:12 100:-8
machin bench	98:-9 100:28 101:15
bench machin	100:-13 102:8
sander	0:-9 1:-12 5:-11 6:-9 7:-8 8:-37 9:-27 10:-9 11:-38 12:-18 13:-19 14:-36 15:-13 16:-12 17:-19 18:-10 20:-10 21:-10 22:-16 23:-27 24:-11 25:232 26:113 27:-22 28:-37 29:46 30:-15 31:-18 32:-14 33:-26 35:-25 36:-8 37:-8 38:-29 40:-13 43:-16 44:-8 45:-12 47:-16 48:-20 52:-23 53:-24 54:-14 55:-26 57:-16 58:-10 60:-9 62:-8 63:-10 64:-10 65:-25 75:-9 77:16 83:-11 84:-13 86:-10 87:-9 89:-15 91:-14 95:-8 97:-9 98:-43 99:209 100:89 101:190 102:179 103:101 104:-33 105:191 106:154 107:-12 108:-20 109:-9 110:-25 111:-30 112:-17 113:-14 115:-14 117:-11 118:-14 119:-11 121:-12 122:-15 124:-13 125:14
machin sander	98:-26 99:14 100:24 102:8
sander $	8:-9 11:-9 12:-10 14:-12 25:73 26:-19 27:-10 29:47 35:-9 52:-9 77:26 99:50 100:28 101:-20 102:-8 103:81 105:28 106:25 125:29
belt	11:-9 23:-8 25:36 26:20 28:-8 29:21 42:20 52:-8 99:47 100:17 101:73 102:42 105:51 106:21 111:-16 125:-17
machin belt	101:11 102:-8 105:10 111:-12
belt sander	11:-9 23:-8 25:36 26:20 28:-8 29:21 99:48 100:19 101:47 102:44 105:55 106:22 111:-16 125:-17
sander machin	26:9 100:-17 101:10 105:11 111:-12
machin press	25:14 98:-22 100:11 102:34 105:9 111:-12
press machin	25:19 98:-12 100:-29 102:27
what machine	8:-9 25:68 29:-12
machine are	25:40
machine have	25:34
which machine	25:30 26:42
machine do	25:25
show machine	25:21
machine $	25:53 29:29 35:-8 57:-8 98:40 100:56 125:-8
the machine	14:-10 26:11 29:46 98:41 100:50
is sander	25:32 26:13
sander in	26:36
in use	125:22
is belt	25:27
sander free	25:29 29:28
servic==e	5:9 11:-8 16:-9 25:69 26:-14 29:-12 86:13 99:-8 101:48 102:120 125:-12
is bench	25:28 26:13
bench in	25:13
servic	5:9 11:-8 16:-10 25:69 26:-14 29:-13 86:13 99:-8 101:61 102:120 105:-8 125:-12
in servic	25:56 102:24
servic $	25:41 101:-16 102:115
^ sander	25:-10 26:76 53:-8 99:11 100:22 101:79 102:48 105:50 106:-23 125:-15
^ bench	99:45 101:75 102:43 105:21 115:-8 125:-12
sander down	25:8
^ anyon	25:12
anyon at	25:12
at at	83:13 97:12 105:20
at press	25:20 107:49
is at	13:14 25:20 125:18
press now	25:16 44:14 98:8 103:22
who at	25:22
at sander	25:13
at on	25:15 33:16
on sander	25:15 29:12
sander now	25:16 29:-8 99:27 103:29
on press	25:14
is anyon	25:12
is press	11:15 13:-10 16:-8 25:54 125:61
is using	25:26
has press	25:8
use==s	25:10 73:8 83:17 86:11
who use	25:10
use belt	25:15 101:10
bench now	61:16 103:18 105:9
use press	25:15 101:11
has belt	25:8 26:18 29:-9
work==ing	8:-8 14:9 16:-12 25:76 28:37 29:-15 52:16 53:-8 58:8 61:-9 63:13 101:-16 108:26 109:14 110:-14 111:20 112:12 125:-8
is work	14:-9 25:9 28:8 112:18
work at	25:20 53:10 58:17 61:38 64:-9 103:-8 107:14
using sander	25:8
at belt	25:-19 29:8 103:19
work on	11:-8 13:-21 15:-10 16:-8 17:-8 27:20 28:27 29:8 33:9 38:-17 47:-8 53:43 54:26 65:50 107:47 108:28 109:34 110:-17 111:49 112:-20 125:-18
sander ok	25:13
okay==	3:18 25:15
okay	3:18 25:15
bench okay	25:15
okay $	3:11 25:15
sander out	25:9 101:8
^ until	9:11 25:16 28:12
until when	9:14 25:16 28:11 30:8
press down	25:46 125:-12
sander back	102:42
press out	25:13 101:32
of servic	25:15 86:15 101:25 102:21
bench is	13:-10 14:41 15:21 99:48 103:-12 105:22
is down	25:13 51:9 92:12 101:61 125:14
sander is	25:-8 26:-8 29:-9 100:17 101:16 105:24 125:17
which press	25:12
press is	25:-31 26:-8 29:15 101:24 102:78 125:35
which work	23:14
use sander	25:10
stage==s	13:-14 17:-9 25:14 27:238 30:-8
stage	13:-14 17:-9 25:14 27:238 30:-8
which stage	25:16 27:15
stage need	25:11
need sander	100:-9 105:14 106:20
need belt	25:15 105:8
stag==e	11:-8 13:21 16:-12 17:-18 27:60 29:-15 43:37 44:-10 64:-18 98:-9 99:-15 100:-14 103:77 104:82 107:25 108:13
stag	11:-8 13:21 16:-12 17:-18 27:60 29:-15 43:37 44:-10 64:-18 98:-9 99:-15 100:-14 103:77 104:82 107:25 108:13
which stag	25:8 27:25
sander used	25:10
press need	25:9 99:20
sander need	99:15
sander for	25:20 48:-10 105:65 106:31
is done	11:-11 13:31 16:-13 25:14 27:-8 29:-17 43:25 44:47 45:18 101:-8 103:87 108:-8 114:34 125:-14
done at	16:-9 44:14 103:39
on belt	29:10
at bench	61:20
on bench	25:11 29:11
need bench	25:22 105:16 106:14 125:-10
bench for	25:22 101:12 104:-8 105:46
^ stat	25:44
the sander	11:-9 14:-11 17:-9 25:49 26:11 28:-12 29:22 33:-13 38:-12 48:-13 77:24 84:-8 99:35 100:27 101:21 102:16 103:106 104:-13 105:32 106:47 125:42
of sander	25:10 99:26
of bench	25:9 26:8 99:19
are down	101:13
many bench	25:20
sander are	101:8 102:39
bench are	25:11 102:34
many sander	8:-13 25:30
sander do	25:12
booking==s	11:-8 17:-9 26:265 28:-8 29:-11 62:-9 63:-8 106:8
booking	11:-8 17:-9 26:265 28:-8 29:-11 62:-9 63:-8 106:8
^ booking	26:72
tomorrow day	118:13
machin $	98:15 99:18 100:18 103:78
@day day	110:15 111:12
@day part	110:8 112:-9
list booking	26:12
booking for	26:48
booking $	26:106
show booking	26:8
booking in	26:21
in next	111:11
@day morn	53:9 110:27 115:23
the booking	17:-8 26:40 106:11
my booking	26:22
booking on	26:14
^ my	12:35 28:20 33:44 58:14 111:27 124:30 125:-11
in tomorrow	111:20
in this	14:25 21:11 25:30 26:11 29:-11
booking of	26:30
#r in	101:8
the afternoon	11:23 43:22 46:-8 53:10 101:15 105:9 109:-8 110:36
sander on	105:38 106:10 125:19
#r morn	26:9
the even	54:14 66:14 110:14
book==ed	11:-16 13:-12 14:-8 23:-12 25:29 26:205 28:-9 29:-31 33:-9 106:18 113:10 125:-10
has bench	14:-8 26:16 105:32 111:-8
book on	26:41
has reserv	26:9
sander book	26:28 106:11 125:-8
who book	26:13
book bench	26:8
book $	26:68 29:-8 33:-17 86:8 105:19 106:36 125:9
has book	26:10
book sander	26:12 105:10
bench on	105:13 106:31 111:-11
when has	26:15 28:-8 29:23
book belt	105:11
sander reserv	26:11
bench reserv	26:13
is book	23:-8 25:-10 26:78
@person on	64:48 109:27
&#o@person	28:-11 47:-15 110:48
for @person	26:-9 29:75 59:11 60:9 105:26
@person for	110:19
@person @day	28:-12 109:24 111:14
@day in	101:18 109:-8 110:22
&@day@person	26:-11 28:8 29:28 33:8 62:-20 63:-14 105:-8 106:45 109:61 110:24 112:-9 125:17
on @day	11:-15 25:-8 26:35 28:67 29:13 45:-19 46:-9 52:11 53:12 62:-9 94:-19 101:23 105:10 106:25 109:68 110:23 111:13 112:-37 115:20 125:127
i reserv	26:14 105:13
book==	25:-8 26:9 32:12 33:-15 35:18 49:8 105:116 106:-22 125:20
i book	26:29
book next	25:50 26:-30 29:-11
@day afternoon	26:22 52:-14 53:14 54:19
@person reserv	26:14
reserv in	83:18
@person book	26:36 33:-15 125:20
did @person	26:70 33:23 106:-10 125:-20
reserv on	26:10
&#r@person	109:-9 111:33
taken for	26:12
)~",
R"~(the morn	53:23 101:11
sander taken	26:41
press book	25:46 26:-30 29:-10 106:16
have press	11:-20 26:36 44:9 99:-8 100:36 105:30 125:-8
have bench	26:21 100:18 105:8
have sander	105:14
sander the	26:8
anyth book	26:22
anyth reserv	23:-11 26:15
kind==	8:27 24:13 27:27 39:8 49:34 80:-8 98:13 100:22 110:10
bound==	13:33 27:54 29:-14 30:12 46:12
^ stage	27:72
kind	8:27 24:13 27:27 39:8 49:34 80:-8 98:13 100:22 110:10
new_board	27:15
kind new_board	27:14
bound	13:33 27:54 29:-14 30:12 46:12
fil	1:9 2:8 25:-13 27:30 29:-10 30:29 39:13 43:31 77:28 79:-12 89:-9 93:-10 97:30 103:58 108:27 125:-11
end fil	1:12 39:13 43:35 93:-8
fil end	27:22 30:12
round	18:9 25:10 27:56 28:9 43:16 88:11 103:10 104:34
end round	27:10
@job kind	27:9
some_slot	27:8
#n kind	27:10
@job fret	43:-14 45:19 70:13 73:13 92:10 96:10 107:30
fret #c	46:11
kind refret	27:10
#n fret	2:-22 3:-8 4:45 5:-14 13:-17 16:-23 17:66 27:101 29:-14 30:85 33:-10 42:-10 43:-12 44:9 46:43 70:10 72:18 76:-10 77:-9 82:-14 89:-9 92:15 93:-15 97:-11 104:27 125:-18
round end	27:19
#c job	47:-11 71:12 72:21
fil fret	97:33
the stage	27:73
stage of	27:41
stage $	27:22
refret==	27:67 29:-25 30:137 35:-8
stage for	27:26
whol refret	27:11 30:9
refret $	8:-11 9:25 27:27 30:29
of a	27:27 41:-14 42:16 69:13 71:11 80:16 92:25 125:-10
a whol	27:8 30:9 32:16 63:10 119:9
for an	30:11 104:-10 105:35
whol job	30:29
fil==ed	1:11 27:17 29:-8 30:29 39:13 43:34 77:28 93:-9 97:32
fil refret	30:11
a job	23:10 103:10
what stage	27:51
stage doe	27:51
a refret	27:40
round==ed	27:17 43:17
stage has	27:10
has a	3:-10 41:25 68:10 88:17 94:44 99:15 110:24 125:-10
with round	27:12 30:8
do on	13:-12 27:22 29:12 33:18
done for	13:-11 27:14 40:19 43:25 108:33
the work	13:-13 27:37 64:26 109:11
stage take	27:9
with fil	27:9 30:13
#n still	1:-8 13:39 23:56 125:-13
far is	13:-10 16:-8 27:33
we on	12:16
far am	27:11
i on	27:11
much work	8:-11 13:-11 27:74
work is	13:-9 27:43 29:10
next stag	17:-11 27:28 107:27
stag of	27:23 107:27
stag for	27:11
what come	2:-8 10:-9 13:26 16:14 17:-20 23:-12 27:13 29:51 33:-12
stag come	27:16
stag is	13:33 43:16
check==ing	107:8 110:27
of board	103:15
board take	104:10
doing==	4:-14 11:-10 13:-9 15:35 17:-11 28:-14 29:64 30:19 32:8 47:-12 48:25 64:22 104:16 107:16 113:18 122:8 125:-11
doing	4:-14 11:-10 13:-9 15:35 17:-11 28:-14 29:64 30:19 32:8 47:-12 48:25 64:22 104:16 107:16 113:18 122:8 125:-11
doing slot	108:15
fret take	103:13 104:19
tru==ing	2:-8 13:-11 43:30 87:-8 103:14 104:49 107:65 108:30
tru	2:-8 3:-8 13:-16 33:-8 43:88 48:-8 65:21 87:-16 94:14 103:13 104:48 107:79 108:28 113:-12
tru the	43:9 107:44 108:11 125:11
clean==ing	22:11 27:16 107:34 108:-9
clean the	107:23
the board	3:-9 16:-12 17:-8 29:-10 30:8 43:22 45:-9 72:8 76:27 78:-11 87:28 89:-16 90:64 91:-10 93:41 103:9 107:12 125:-9
pull==ing	2:-8 43:19 44:-8 72:-15 77:45 103:52 104:10 107:89 108:52 125:-11
doe pull	27:11
pull board	103:11
true==ing	43:13 107:23
true	3:-10 8:48 43:73 87:-8 88:-10 104:18 107:40
pull fret	0:58 17:-8 39:27 72:53 77:-8 95:15 107:20 125:-9
nip	0:23 25:8 39:16 43:12 55:10 77:27 103:15 104:17 107:20 125:-19
doe press	27:25 32:-10
press take	27:25 32:-10 99:34 104:-10
polish	2:-8 17:-8 25:-18 27:58 32:-8 43:97 87:-8 98:15 99:-10 103:54 107:-12 108:28 125:-9
seat	2:-8 13:-13 17:-12 24:9 27:30 32:-17 41:-10 43:92 44:-9 45:-12 63:-13 65:-11 77:-17 91:-8 95:132 99:-9 103:81 104:32 107:55 114:-13 125:10
doe seat	27:23 32:-10
seat take	27:23 32:-10 104:22
for #c	16:-8 44:-8 55:20 60:36 85:26 116:9
doe cut	27:20 32:-11
cut take	27:19 32:-11 104:32
recheck take	104:8
corner	25:-8 27:52 43:22 98:19 103:38 104:41 125:14
pull==	0:10 27:9 43:22 57:18 72:40 107:9 122:10 125:-12
it take	27:15 32:11 104:8 121:8
take to	9:-9 32:38
to pull	27:9 72:51 107:10 125:-10
board of	3:-11 43:31 72:9 76:30 78:-9 87:50 90:-17 91:-9 93:33 107:30 125:-8
true==	3:-9 8:49 43:58 88:-10 107:14
to true	27:8 107:22
true end	107:9
end of	11:-9 30:30 39:10 70:14 76:11 79:19 107:14 108:12 114:18
fret @job	15:24 108:9
nip==	0:17 25:9 55:11
to nip	0:18
true the	107:11
fret on	2:68 4:35 13:-8 15:-10 16:-15 17:35 24:8 27:-26 33:35 43:-9 45:-12 93:10 97:8 103:8 107:-9 108:12
dress==	103:27
of $	5:32 27:9
to bend	18:9 107:14
pull the	2:-11 15:-9 27:14 33:36 43:27 48:18 57:18 72:-26 103:31 107:48 108:15 125:-8
hour==s	0:-9 11:-29 12:-11 26:-11 28:194 29:-40 33:-10 35:-8 37:11 43:18 44:10 45:-9 46:-9 47:-8 52:90 53:-17 54:63 55:44 61:-9 62:-11 63:-13 104:30 109:112 110:-19 111:15 115:-13 118:-9 125:-13
hour	0:-17 1:-13 4:-11 6:-8 11:-34 12:-13 13:-9 14:-9 16:-18 23:-10 25:-12 26:-21 27:-12 28:180 30:-11 33:-17 35:-13 36:-8 38:15 39:-9 40:-9 43:28 44:22 46:-9 47:-11 50:10 52:83 53:-15 54:66 55:36 61:-13 62:-12 63:-14 64:-8 68:11 70:11 72:-9 73:-10 75:-12 83:-9 84:27 89:-17 91:-10 95:15 96:9 99:-10 100:-9 103:-10 104:119 105:44 106:-9 108:14 109:109 110:-28 111:21 115:12 118:-13 125:-39
^ hour	28:73 54:41 110:-8
@person person	28:17 29:19 61:12 62:-12 63:-9 64:-19
~ day	28:8 54:10 111:-11
~ last	110:10
@person last	62:33
when are	28:31 29:8
shop open	28:65 29:-8
on from	28:23 29:34 109:-9 110:8
from #r	28:-8 29:8 45:10 52:32 71:-12 105:9 110:-17 111:35
#r to	75:26 110:10
what hour	26:8
clos==ed	11:-12 28:29 29:-14 30:-8 31:68 32:-11 43:40 47:-12 52:123 53:84 55:-8 65:-8 87:25 101:-9 110:-9 112:86 113:-8 118:-8 122:8 125:-49
clos	11:-16 14:-8 25:-9 26:-9 28:21 29:-20 30:-12 31:75 32:-13 33:-9 43:38 47:-15 52:99 53:190 54:-22 55:-10 60:10 65:-10 87:24 100:-8 101:-13 106:-9 108:-11 109:-9 110:-18 111:-12 112:131 113:-8 115:-11 118:-15 119:-10 125:18
we clos	28:17 53:18 112:-11
clos for	28:11 53:14
for from	28:14 29:8 110:10
#o to	47:-8 110:30
to today	118:15
shop clos	28:34
clos from	28:10 53:32
&#r@day	52:56 54:12 105:24 109:-8 112:-8
till==	9:24 11:-11 13:-8 20:-8 23:10 28:43 29:-14 31:22 51:27 53:13 54:26 75:-8 97:22 101:42 105:-10 109:-23 110:-16 111:72 114:29 115:19 117:-8 118:19 125:-32
till	9:24 11:-11 13:-8 20:-8 23:10 28:43 29:-14 31:22 51:27 53:13 54:26 75:-8 97:22 101:42 105:-10 109:-23 110:-16 111:72 114:29 115:19 117:-8 118:19 125:-32
clos $	28:20 31:8 43:23 52:33 60:14
@day till	29:8
open==ing	2:-12 5:14 28:51 54:48 105:-10
open hour	28:-14 52:98 54:-28 109:-9
hour $	11:-17 12:-9 25:-8 28:72 29:-16 35:-9 52:29 54:46 95:-8 96:9 104:90 105:52 108:-9 109:78 111:-14
hour for	26:-14 28:46 29:-8 52:23
are our	32:10
hour next	26:8 28:11
^ our	55:76 88:11 118:11 122:10
hour in	109:15
in from	50:12 110:-11 111:28
till @day	101:36 115:16 125:-8
the hour	28:31 52:11 54:15
hour on	29:34 52:10 54:9 111:26 125:-14
clos==e	31:9 52:-15 53:131 60:13 125:-22
clos on	52:-12 53:14 112:43 125:73
shut==	11:-9 28:13 29:-12 52:39 53:146 108:-8 110:-10 111:-11 112:41 125:-15
shut	11:-9 28:13 29:-12 52:39 53:146 108:-8 110:-10 111:-11 112:41 125:-15
we shut	28:47 52:12 53:-23
open next	52:-17 53:39 54:23 112:-14 125:-11
late==	2:8 8:-9 9:-16 11:66 12:-26 13:-8 22:-8 25:-8 29:36 31:13 32:47 52:-8 54:26 111:12 118:50
late	2:8 8:-9 9:-16 11:66 12:-26 13:-8 22:-8 25:-8 29:36 31:13 32:47 52:-8 54:26 111:12 118:50
how late	28:13 29:-12 32:55
late are	28:14
for now	29:-9 37:31 65:11 108:71
tomorrow till	111:10
@person work	12:-9 28:17 29:-18 61:22 62:-21 63:26 64:-12 109:70 110:-13 111:51
to #o	110:10
@person come	28:38 59:19 109:-13 111:28
come $	4:19 9:-13 19:-17 27:-14 29:-9 31:74 32:24 50:-10 117:66 119:29 125:-23
come in	19:39 28:32 31:-8 49:14 59:26 109:28 110:-16
work $	11:-8 14:-10 16:-8 23:11 25:40 27:-11 28:45 29:38 35:55 98:9 108:22
is @person	12:26 26:-14 28:52 29:15 59:61 60:-31 61:-10 62:-10 63:-10 64:30 109:-8 110:-12 111:-16 125:59
@person in	28:16 63:9 110:-8 111:32
in on	13:12 28:23 29:-8 54:22 109:38 110:-16 111:8
@person ther	28:19
@person here	28:12 109:-11 111:24
here on	29:-12 33:34 52:18 53:20 109:-12 110:33 111:-8 125:-23
&#r@day@person	28:-11 52:-8 109:56 110:-23 111:22
@person away	110:18
today until	54:18
i work	28:70 29:-17 111:21
till #r	118:8
till #o	53:19
work of	30:10
my hour	28:52 29:-9 111:29
hour of	28:15 98:13 109:26
is away	110:28
out @day	47:19
out for	28:8 108:25 110:10
)~",
R"~(off for	13:11 23:-18 84:35 108:12 110:14
somebody==	8:-9 9:-8 11:-18 15:10 22:-10 23:50 27:9 28:20 29:16 30:16 33:9 46:9 58:11 65:28 68:13 76:9 85:-9 107:-11 120:10 125:84
somebody	8:-9 9:-8 11:-18 15:10 22:-10 23:50 27:9 28:20 29:16 30:16 33:9 46:9 58:11 65:28 68:13 76:9 85:-9 107:-11 120:10 125:84
is somebody	28:24
is anybody	13:-12 15:68 17:-16 23:18 26:14 28:33
anybody in	28:20
anybody here	28:14
everybody==	9:-9 12:-31 14:89 25:-19 28:22 29:-9 33:31 65:64 88:10
everybody	9:-9 12:-31 14:89 25:-19 28:22 29:-9 33:31 65:64 88:10
^ everybody	28:12
everybody hour	28:23
are everybody	28:10
hour from	28:35 105:8 109:-9 111:-8
agenda==	26:-11 29:136
agenda	26:-11 29:136
^ agenda	29:95
#n person	59:9 60:-9 64:9 107:10
@job person	33:8 64:10 107:8
@job mine	13:-24 15:61 64:35
&#n@job@person	16:9 33:16 36:-8 43:17 64:11 77:9
bench job	103:26
schedul==e	16:37 26:-9 29:93 30:-8 101:-11 105:-12 115:14
schedul	11:-8 16:35 23:-8 26:-9 29:116 30:-9 31:8 101:-11 105:-12 115:14
the schedul	29:14
schedul $	29:10
the agenda	29:10
agenda $	29:10
-==	0:20 1:-8 2:50 5:19 6:-19 8:-27 9:32 10:-11 11:39 13:20 16:27 17:8 18:12 19:-8 22:-10 24:33 25:-11 27:29 28:-18 29:16 30:-12 31:-10 32:-11 33:12 35:25 36:-26 38:-18 40:-11 42:-19 43:24 44:-24 47:-17 48:18 52:15 59:13 62:-36 63:50 69:-9 71:13 74:14 75:-32 77:-19 81:-8 82:24 84:14 87:10 89:-22 90:-11 94:26 95:-14 97:-9 98:13 99:31 100:12 101:-14 102:-9 103:-8 105:11 106:-11 108:-13 109:27 110:-11 112:9 113:-11 114:8 115:-11 116:-9 117:-16 118:16 121:19 125:-42
plan on	25:-9 29:33
-	0:20 1:-8 2:50 5:19 6:-19 8:-27 9:32 10:-11 11:39 13:20 16:27 17:8 18:12 19:-8 22:-10 24:33 25:-11 27:29 28:-18 29:16 30:-12 31:-10 32:-11 33:12 35:25 36:-26 38:-18 40:-11 42:-19 43:24 44:-24 47:-17 48:18 52:15 59:13 62:-36 63:50 69:-9 71:13 74:14 75:-32 77:-19 81:-8 82:24 84:14 87:10 89:-22 90:-11 94:26 95:-14 97:-9 98:13 99:31 100:12 101:-14 102:-9 103:-8 105:11 106:-11 108:-13 109:27 110:-11 112:9 113:-11 114:8 115:-11 116:-9 117:-16 118:16 121:19 125:-42
#o -	29:8
schedul of	16:22
@person from	47:-8 110:21
the plan	5:-12 11:19 29:11 37:-8 83:100
agenda for	26:-10 29:48
tomorrow in	110:15
my agenda	29:21
on on	29:8
is our	5:24 9:12
schedul for	16:14 26:-9 29:97 30:-8 101:-11 105:-11
is schedul	29:22
week by	29:14
^ this	1:13 43:19 54:11
me next	29:10
machin on	46:-8 105:12
on @person	29:8
machin for	35:10
peopl of	14:8
week on	110:19
^ week	29:27
week plan	29:14
week for	101:14
of machin	100:13
do next	29:19
begin==	11:-19 13:-9 29:37 107:70 108:-10 114:16
begin	11:-19 13:-11 29:54 46:-8 50:29 52:-17 54:-19 87:22 105:11 107:67 108:-10 111:49 114:15 117:-10
begin with	11:-15 29:33 107:14
start==	11:-12 17:-8 19:-8 20:15 27:12 29:85 43:-10 107:48 109:9 111:26 114:19 125:-10
start	4:-11 6:-9 11:-16 13:-24 15:-35 16:-10 17:-15 19:-9 20:14 27:9 29:80 33:48 43:18 44:-12 48:-8 52:20 58:31 63:-9 64:-12 65:-12 87:21 89:-13 107:190 108:-21 111:40 113:-8 114:12 125:-16
we start	19:-8 20:16 29:12 107:13
start with	19:-8 20:16 29:13 107:27
we work	29:8
on with	107:78
next up	11:43 17:-8 29:-10
up for	38:21 65:42 70:18 99:10
what next	29:17
what now	17:-10 25:-11 29:83
need doing	29:10
doing next	29:27
doing $	113:22
want to	4:18 16:10 27:-10 51:9 69:16 110:-12 124:9
@person start	107:9 111:17
should @person	29:8
@person do	15:66 33:17 64:-16 125:-25
for me	0:-16 3:31 5:-10 20:20 23:-15 29:20 35:10 37:-10 57:18 81:20 105:31 125:24
me $	12:14 13:-16 14:-8 26:-8 28:22 35:25 57:17 58:9 64:37 89:29 105:-14 110:41 125:24
why it	91:12
it now	80:10 106:19
i am	2:-11 6:9 9:30 11:-13 13:-10 17:-21 27:-8 29:-12 30:-8 32:12 33:-10 36:-9 42:-21 43:31 51:15 52:17 60:11 64:16 65:19 79:9 82:-17 89:14 97:-8 107:81 108:11 110:47 111:39 113:15 122:-10 125:54
am free	29:18
noth==ing	5:21 8:-9 11:-13 13:13 16:-9 26:-8 28:-8 29:30 33:-8 44:-12 45:29 47:-8 57:19 65:-8 77:15 84:13 87:67 89:-8 90:24 91:71 93:51 107:-9 108:-9 114:8 115:-12 117:15 125:22
noth	5:21 8:-9 11:-13 13:13 16:-9 26:-8 28:-8 29:30 33:-8 44:-12 45:29 47:-8 57:19 65:-8 77:15 84:13 87:67 89:-8 90:24 91:71 93:51 107:-9 108:-9 114:8 115:-12 117:15 125:22
have noth	13:25
noth to	26:-9 29:41
free what	23:-42 84:62
me work	29:17
work to	29:11
me someth	0:10
someth to	33:20
i go	16:13 83:15 107:10
go on	29:8 45:15 55:11 83:14 107:17 108:29
on $	13:18 17:-8 20:8 28:-20 29:34 32:24 41:-21 45:-9 52:32 55:42 63:16 77:-11 99:16 103:19 107:-8 108:-9 110:-15 111:36 120:18 121:10 125:55
i start	27:14 29:52 107:-15 111:10
start $	43:-12 107:54 114:13
what am	17:9 29:26
we at	29:11
at $	13:32 14:79 17:-12 25:-15 32:9
to $	1:27 5:-9 10:15 15:35 18:26 33:-12 45:8 125:-10
have on	0:-20 4:25 11:19 29:28 33:-8 55:20
have for	29:17
got to	44:52 72:-11 125:29
got on	12:30
rest==	11:-8 17:-9 29:-8 31:-10 38:8 45:21 70:22 90:-8 92:15 106:-8 110:10 117:79 118:56 119:82 125:-26
got what	12:9 14:-9
rest	11:-8 17:-9 29:-8 31:-10 38:8 45:21 70:22 90:-8 92:15 106:-8 110:10 117:79 118:56 119:82 125:-26
rest of	38:9 53:11 101:8 110:17 118:43 119:17
on in	29:8
will @person	28:43 110:-13 125:-21
for what	26:8
the rest	17:-8 38:9 45:21 53:9 70:22 90:-8 92:15 110:16 117:10 118:28 119:52 125:-13
in @day	28:27 109:11 110:18
@person doing	29:9
doing on	29:9
on for	9:-15 27:21 28:-18 29:21 31:31
is plan	11:-12 25:-11 29:53 83:32 84:-12
schedul==ed	29:23 31:8
plan at	5:25 29:-14 104:22
on at	12:16 115:8
for bench	6:27
done from	55:23
sander #r	106:9
press #o	105:8
@job go	11:19 33:11
go under	11:20
be in	10:-10 11:-8 28:11 54:24 98:20 110:28 111:-19 122:15 125:-8
in press	86:9
day will	29:12
to job	105:11
to @job	53:14 112:-10
@job begin	87:21
@job start	87:29 107:-13
busy==	25:-30 29:86 110:-11 111:11
busy	25:-30 29:86 110:-11 111:11
come on	111:9 117:18 118:24
sander from	99:21 103:9
@person free	29:40 111:-11
free on	29:39 111:-11
of this	29:-10 33:20 53:14 110:37
@day -	52:-8 109:16
december at	115:19
at tomorrow	84:8 95:12 105:10
tomorrow at	26:27 43:11 45:-9 52:-9 53:8 89:-8 93:-8 95:9 96:8 101:22 102:11 108:19 115:60 117:21 125:-9
&#n#o@person	99:11 111:17
&#n#r@person	105:13
free at	29:25 125:-9
at this	29:9 66:8 71:-12 77:23 96:13 97:13 111:19
at @day	71:-11 81:8 82:-9 96:14 115:8
@day at	11:14 29:18 44:26 45:23 52:-25 71:18 82:-11 95:22 96:23 97:14 102:16 107:12 108:18 111:20 112:18 115:10 125:-12
&#n@day	11:-15 28:-17 29:-9 30:14 40:12 47:15 52:47 54:65 75:-18 94:-19 95:21 97:-8 101:28 102:12 105:25 108:18 109:-32 110:-14 111:15 115:32 117:33 118:37
yesterday	0:-13 1:-19 2:-9 3:-8 4:-9 6:-8 13:-14 16:-15 17:-15 25:-10 31:-9 33:19 36:15 38:-8 39:17 40:38 41:-15 43:39 44:54 45:-17 48:-8 50:12 64:-9 66:21 71:10 72:11 73:17 75:-19 77:13 78:28 82:-8 85:-8 87:-8 89:-14 90:-15 91:-16 93:-9 95:21 97:51 100:-8 101:29 102:-11 107:32 108:-15 111:33 113:-9 114:-8 115:61 116:12 117:19 119:8
at yesterday	1:-8 36:9 37:8 81:8 82:-9 97:8 102:12 115:9
yesterday $	1:-11 11:-9 13:-11 17:-12 25:-8 33:30 36:21 38:-9 39:10 42:9 43:22 44:24 54:8 77:18 89:-11 91:-10 95:8 97:51 101:28 102:-21 107:32 108:-12 111:10 115:61 117:15 125:12
free the	38:25 84:15
#o at	3:25 71:-8 97:8 111:10
ther time	30:19
time on	17:-8 106:11
some time	115:-18 125:30
time at	32:14
room==	29:11
room	29:11
&#n#r@day	16:-10 52:9 71:12 97:16 105:40
can @person	29:11 30:8
get bench	29:8
#t	1:-12 11:-14 13:-12 16:-10 26:-18 28:-36 33:-8 43:13 44:29 45:-8 47:-9 52:65 54:93 55:-10 56:18 61:-8 63:-10 64:-8 71:12 75:-19 76:-8 83:9 87:-8 89:-10 91:-8 95:19 97:18 99:-8 101:52 102:9 105:76 106:-10 108:31 109:23 110:-15 111:77 112:-10 115:45 117:17 118:-9 125:-17
at #t	13:-8 29:22 43:16 44:35 53:12 71:15 75:-9 83:11 95:21 96:10 97:19 102:12 105:8 108:36 115:11 117:19
&#t	1:-11 11:-12 13:-10 16:-9 26:-11 28:-20 29:10 43:17 44:31 52:29 53:9 54:68 55:-8 56:19 71:13 75:-14 83:10 89:-9 95:20 97:12 101:43 102:10 105:48 108:33 109:-10 110:-11 111:33 115:55 117:18 125:-13
#t $	13:-8 26:-8 28:-13 29:15 43:20 44:35 52:18 53:9 54:25 71:15 75:-14 95:8 96:10 97:8 101:17 102:12 105:30 107:19 109:17 110:-8 111:11 115:49 117:19 125:-11
#n hour	0:-12 16:-8 28:-12 36:-10 43:40 44:14 45:-12 46:-8 52:-13 54:23 55:16 68:13 73:-8 84:30 89:-8 96:14 99:-9 101:23 104:94 105:12 108:10 111:14 115:19 125:-8
)~",
R"~(ago	16:-16 17:-9 37:-10 38:20 43:29 44:36 45:31 50:11 68:13 70:10 71:-11 73:-9 75:20 84:30 89:-15 91:-8 95:26 96:18 97:17 99:-18 101:10 102:37 104:-23 105:-8 108:49 111:8 115:17 125:-16
hour ago	16:-11 37:-9 38:23 43:14 44:28 50:12 68:14 70:16 73:-8 75:-8 84:30 89:-8 95:30 97:11 101:11 102:13 104:-11 108:8 111:8 115:27 125:-8
ago $	16:-15 38:16 44:38 45:20 70:11 73:-9 75:-12 89:-12 95:24 96:12 97:28 99:-17 102:39 104:-20 108:51 115:28 125:-11
press from	100:22 103:13 105:39
has time	29:11 47:26 65:49
time for	11:22 27:91 29:-9 30:9 55:-14 104:22
full==	0:18 8:38 16:19 21:-10 33:30 79:-14 83:16 91:22 104:17 109:35 117:11 125:18
full	0:18 8:38 16:19 21:-10 33:30 79:-14 83:16 91:22 104:17 109:35 117:11 125:18
how full	8:34 21:-9
full is	8:34 21:-9
how busy	25:-26 29:68
we in	8:13 25:8
the com	26:13 28:12 29:8
com week	26:11 28:12 29:8
load==ed	2:-11 16:11 75:15
busy am	29:18
i $	29:16 31:11
busiest==	29:8
busiest	29:8
busiest $	29:8
which machin	11:-10 26:51 28:-8 29:31
machin hold	29:52
hold us	29:17
us up	29:17
bottleneck==	25:-13 29:59
bottleneck	25:-13 29:59
the bottleneck	25:-13 29:40
bottleneck $	25:-13 29:59
our bottleneck	29:14
wher is	1:10 17:11 20:24 25:-12 29:19
is hold	91:10
what hold	91:14
hold everyth	29:49 83:43
everyth up	29:50
the machin	26:15 59:14 99:26 100:44 103:-14 106:9
machin load	29:11
load of	16:10 29:15
machine load	29:11
work do	29:11
ther at	33:17
slack==	29:59
slack	29:59
slack for	29:9
the slack	29:37
leeway==	29:26
leeway	29:26
leeway $	29:10
the leeway	29:14
much slack	29:17
much time	27:-17 29:40
time to	22:19
time has	29:31
#n got	0:-14 36:26 41:-11 43:18 70:-10 77:30 82:13 95:13 96:-9
@job got	13:-8 44:16 94:52
time doe	28:34
time do	29:10
have left	29:8
deadline $	29:13
deadline of	29:10
start==ed	13:-9 15:-31 33:57 43:42 58:10 103:10 107:53
when may	29:15
be cut	4:15 5:18
begun==	13:24 29:16 43:-11 107:69
begun	13:24 29:16 43:-11 107:69
be begun	29:17
begun at	13:34
may the	3:12
start on	107:34 108:-9 125:14
to begin	11:-15 29:30
start the	27:14 107:25
tightest==	29:14
tightest	29:14
is tightest	29:11
tightest $	29:14
urgent==	13:35 15:-10 17:-12 48:-9 65:-14 113:164 114:-11
urgent	13:35 15:-10 17:-12 48:-9 65:-14 113:164 114:-11
is urgent	13:-10 113:57
urgent $	13:40 15:-9 17:-11 65:-9 113:107 114:-8
begin==ning	29:16 46:-8 50:29 105:12 117:-10
latest begin	29:17
begin of	29:17
latest start	29:30
start of	29:10
finish==ed	0:37 1:-12 11:11 13:-15 15:-8 16:-17 17:-9 31:24 43:180 44:87 48:-11 64:-12 65:-8 87:-8 101:-8 102:13 107:-18 108:34 113:-11 114:38 125:20
when would	28:14 30:9
finish	0:36 1:-12 11:11 13:-15 15:-8 16:-17 17:-9 30:13 31:24 43:180 44:87 48:-11 64:-12 65:-8 87:-8 101:-8 102:13 107:-18 108:33 113:-11 114:38 125:18
be finish	11:23 29:12 43:-8
#n ready	29:9
ready by	47:8
@job ready	13:33
late $	11:35 12:-20 29:47 31:19
@job in	46:11 72:18 85:-8
in time	11:-8 29:35
be late	11:-8 12:-21 29:42 118:12
be on	4:16 8:16 27:-14 98:22 115:17
run behind	11:19
behind $	29:10
we late	11:33
danger==	53:11
danger	53:11
keep==	0:-16 1:-15 3:13 9:-8 14:9 20:-9 23:28 29:8 30:14 32:45 33:-9 35:-8 36:-27 37:93 38:-28 40:11 51:-17 52:22 76:8 83:63 84:-10 105:22 106:-22 111:-14 119:14 121:-9 125:99
promis==e	2:25 11:-12 13:8 16:-11 17:-10 23:-8 30:124 35:21 47:84 125:-9
keep all	21:13 29:22 125:-8
all promise	29:13
promise $	29:19
all our	8:50 9:-15
finish $	29:32 30:9 43:27 44:24 48:-8 102:15 108:32 114:41 125:-9
are all	17:23 25:21 27:27 43:16 53:13 83:-12 90:9 112:-11
doe what	29:56 33:-16
what on	33:12
what $	5:20 8:-24 9:-8 10:10 11:38 19:52 22:14 26:19 29:20 32:-11 33:-16
on what	27:16 29:25
is doing	15:36 28:-11 29:20 43:-9 107:14
doing what	28:-10 29:30
what for	5:23 8:27 12:17
^ promis	11:-9 47:82
refret by	30:15
kind $	8:28
glu==ed	13:-10 29:-9 30:36 44:-11 89:-9 91:-10 95:-10 96:246 97:-11 107:-8 120:18 125:36
glu	13:-10 29:-9 30:36 44:-11 89:-9 91:-10 95:-10 96:246 97:-11 107:-8 120:18 125:36
another==	0:-16 29:-12 30:43 39:56 45:9 48:28 50:-9 79:15 93:25 115:8 116:9 122:10 125:-10
when can	29:8 30:10
we promis	11:15 30:25
another	0:-16 29:-12 30:43 39:56 45:9 48:28 50:-9 79:15 93:25 115:8 116:9 122:10 125:-10
shop promis	30:12
day could	30:22
could you	0:10 4:8 13:31 18:10 125:35
one more	30:10
glue==	20:8 45:-9 57:13 77:-8 87:103 91:48 95:-18 96:76 125:56
day can	30:17
promis a	2:29 30:10
job with	9:21 30:21
glue	20:8 45:-9 57:13 77:-8 87:103 91:48 95:-18 96:76 125:56
with glue	95:-8 96:23
when could	29:-16 30:55
a new	0:-10 5:-8 13:-8 30:24 35:13 47:-8 49:15 58:25 59:13 72:-9 78:43 80:-9 85:34 120:20 125:61
new job	13:-13 30:14 35:19 46:106 58:-8 71:12 87:-8 125:9
day would	30:11
would we	19:23 29:11
i finish	108:10
could the	2:9
shop have	25:51
more job	29:-8 30:21
in a	22:23 32:10 35:18 50:-8 55:9 74:9 96:11 113:38 116:10 117:14 120:16
refret of	8:-16 9:18 30:14
how soon	9:22 10:-8
would i	17:11
new whol	30:21
with #n	1:8 3:14 13:18 27:16 50:16 82:27 104:15 120:11 125:-11
@person take	16:10 30:40 64:59 65:-13 107:-9 125:-12
job done	30:10
could @person	15:67 30:24 64:-15 125:-25
&#n@person	1:-8 4:-9 13:-12 15:52 16:-11 17:-14 26:-15 27:-12 28:12 29:-14 30:39 33:-10 43:30 55:12 59:65 60:-13 61:-29 64:117 65:23 75:-14 89:-9 107:64 108:-9 110:37 111:20 114:-9 125:8
would @person	28:16 29:-9
another job	30:13
fret with	27:8 30:15
refret be	30:18
more refret	9:12 30:21
a bound	27:32 30:10
bound board	27:25
board be	30:15
new board	10:-13 27:49 30:60 58:-11
would another	30:10
another new	30:11
can you	1:-11 7:12 10:18 20:10 29:-8 32:10 35:32 37:28 124:14
tomorrow for	47:9
for another	30:8
i promis	8:11 11:-15 13:11 16:-8 30:61 47:20
promis on	30:9
@day for	30:11 47:10
another refret	30:16
refret for	30:10
of #c	16:11 21:9 41:-10 42:16 50:-22 51:25 66:16 67:-16 121:28
glu in	96:18
fret in	0:-11 27:11 33:18 36:-9 41:81 42:-17 43:10 72:-13 77:15 78:-14 79:17 82:-9 91:-13 95:-8 103:9 125:26
promis the	47:25
end for	1:-8 39:12 107:12
the end	11:-9 30:41 41:18 42:8 43:23 44:-11 78:-13 96:21 108:9 114:18
ready for	106:17
done this	44:13
you do	35:36
get a	12:8 53:11
glu $	96:69
glue in	87:14 91:42 96:10 125:-9
ready on	47:8
&#c@person	59:146 60:55 61:-11 62:-13 63:-11
have another	115:9
job be	29:12
is today	30:13
possibl==e	0:9 2:12 5:17 30:58
possibl	0:9 2:12 5:17 30:58
possibl $	0:10 5:17 30:44
feasibl==e	30:14
feasibl	30:14
today feasibl	30:13
realistic==	30:9
realistic	30:9
job for	103:10 104:33
crown==s	8:-11 19:52 30:8 40:13 73:10 81:11 82:-9 90:10
#n crown	30:9
crown $	19:29 30:8 40:13 88:10 90:24
end on	39:15 43:10
if you	19:10
happen==s	16:19 17:-9 25:-12 83:15 103:26
happen	5:-9 8:-12 9:-11 11:-9 13:-8 16:13 17:-17 19:-8 20:9 25:-12 29:30 33:125 83:14 103:25
what happen	5:-8 8:-10 9:-11 16:17 17:-9 20:9 29:-10 33:99 83:15
december for	30:21
&#c#o	118:8
bound refret	30:11
refret befor	30:11
must have	91:10
to give	30:17
mov==ed	2:20 4:-13 36:-8 45:30 52:-15 61:10 70:-18 71:-11 75:134 80:-10 89:-16 97:-16 115:-12 118:51 125:24
mov	2:20 4:-13 36:-8 45:30 52:-15 61:23 64:-12 70:-18 71:-11 75:134 80:-10 89:-16 97:-16 115:-12 118:51 125:24
be mov	2:10 80:-10
will have	99:-15 115:14 125:56
to move	30:8
to have	11:18 30:22 55:20
would give	1:-9 15:13
to wait	30:14 114:41 125:-15
would have	30:16
give by	30:12
it need	42:20
soonest==	29:-10 30:32
soonest	29:-10 30:32
the soonest	29:-10 30:24
day we	99:-15 125:46
earliest==	12:23 27:-11 30:130 58:-11
earliest	12:23 27:-11 30:130 58:-11
the earliest	30:68
is first	113:8
earliest day	30:45
free day	110:13
^ earliest	30:25
earliest new	30:19
order @wire	9:33 31:-15 32:18 50:-9 51:39
on order	8:-20 29:-9 31:92 39:-8 116:23 117:19 118:-8
open order	1:26 10:-8 12:12 31:43 119:20
is any	22:8 23:20
@wire on	1:-19 9:-12 18:11 31:33 39:-12 50:-15 66:42 67:42 68:-15 69:20 116:14 118:8
is some	94:10
any @wire	1:-10 8:48 9:-28 22:24 23:47 31:24
arriv==e	9:-15 19:42 31:68 32:11 50:-19 66:-8 117:-23 118:19
arriv	9:-18 19:28 31:88 32:8 50:38 66:-27 67:-15 88:-11 99:13 117:137 119:-9 125:-13
@wire arriv	9:-12 19:37 31:25 50:32 66:-12 67:-12 116:-8 117:12
arriv $	9:-17 19:38 31:77 32:10 50:13 66:-12 117:46 125:-10
)~",
R"~(@wire come	8:-10 9:-15 19:20 31:53 32:17 33:-12 50:-10 66:14 68:14 88:27 125:-12
@wire due	11:-11 31:16 118:16
list order	31:12
order for	6:-8 13:20 31:14 50:-12 116:16 119:22
order of	15:28 31:37 48:9 118:-10 120:11
order come	10:8 31:20
order arriv	31:37 88:-9 117:12
which order	10:-14 27:26 31:26
order are	31:27
are late	31:8
all order	31:9
to come	0:16 27:-11 31:19 32:19 72:12 95:12 113:11 118:8
arriv==ed	19:-14 31:19 50:63 66:-17 67:-13 88:-10 99:13 116:-11 117:162 118:-14 125:-8
arriv yet	31:17
have our	115:16
our order	118:13 119:19
come yet	31:39
delivery==	5:-10 10:-10 19:40 28:-14 29:-22 30:19 31:55 39:9 50:27 66:-21 73:141 114:-8 117:50 118:10 121:-10
when come	31:15
come the	31:15 91:9
next delivery	28:-13 29:-16 31:46
delivery come	31:9
order overdu	31:17
are an	31:23
an order	31:26 116:28 117:-12 120:16
order late	31:16
are order	50:-10 116:23
are clos	31:13 52:9 53:28
supplier==s	8:-10 9:-8 10:18 11:-11 12:-9 14:-13 25:-10 32:165 35:-10 120:35 121:-13 122:36 125:-23
supplier==	8:-14 9:23 19:10 20:-9 23:-11 29:-13 32:34 35:-10 39:-9 49:-13 50:14 55:-12 56:-8 57:-15 58:-14 86:-9 98:-16 100:-12 120:178 121:86 122:154 125:-10
supplier	0:-9 5:-8 8:-24 9:16 10:22 11:-18 12:-13 14:-19 20:-10 22:-9 23:-15 25:-15 29:-19 31:-10 32:199 35:-21 39:-9 49:-13 50:13 55:-15 56:-9 57:-18 58:-16 66:-8 86:-12 98:-17 100:-19 103:-8 108:-9 117:-10 120:213 121:73 122:190 124:-9 125:-33
^ supplier	8:-8 19:-9 32:55 120:-43 121:122 122:-27
supplier supplier	32:18 120:-12 121:14
supplier ~	32:10 55:-9 57:-10 58:-9 120:20 121:95 122:39
~ supplier	32:38 120:-10 122:-23
who are	14:12 28:-19 29:-10 31:32 32:14
our supplier	32:31
supplier $	14:-8 32:79 120:26 122:74 125:-24
the supplier	9:30 32:33 100:-8 118:12 120:30 122:101 125:-26
deliver==s	32:17 118:36 120:-11 121:23
deliver	9:-13 19:25 27:-10 32:29 33:-10 50:12 116:-8 117:65 118:38 121:31 125:8
who deliver	32:22
deliver the	32:12 119:11
supply==es	32:15
who supply	32:15
sell==s	10:-9 32:44 33:-9 120:-8 121:57
sell	10:-9 32:62 33:-9 118:8 121:54 125:-8
who sell	32:46 33:-9 120:8
ship==s	32:16 118:25 121:8
ship	32:23 81:10 118:25 121:8
who ship	32:17
ship the	118:9
who do	9:-8 10:8 32:52
get @wire	32:19
buy @wire	32:13
who did	32:11 33:8
get the	6:9 9:-10 14:-10 19:28 32:23 33:-12 46:-8 73:12 105:24 125:65
whom==	9:-23 10:11 13:-11 15:37 17:-8 19:39 20:-9 23:44 25:-8 26:10 31:-13 32:50 33:24
whom	9:-23 10:11 13:-11 15:37 17:-8 19:39 20:-9 23:44 25:-8 26:10 31:-13 32:50 33:24
from whom	10:16 19:25 32:13
whom do	32:18
@wire take	9:-8 27:-8 32:25
deliver==ed	9:-10 19:27 50:13 116:-8 117:56 125:10
be deliver	118:8
deliver $	19:9 27:-9 32:16 125:19
to arriv	31:8 32:12
take until	32:19
until @wire	32:10
arrive==s	117:-11 118:26
arrive	117:-11 118:26
doe ~	27:-20 32:31
~ take	27:-21 32:25 121:29
deliver==	27:-8 32:11 117:10 119:12 120:9 121:12
~ need	27:-12 32:25 121:24
to deliver	27:-8 32:13 121:13
do ~	27:-13 32:21
ship==	81:10
wire from	0:11 10:-12 32:16 73:15 121:12 122:14 125:-12
order from	9:-8 12:24 31:-13 100:-9 116:-8 119:29 120:69 121:-11 122:65 125:-13
list our	31:15 32:20
lead==	27:-18 29:-13 32:57 55:-8 58:41 61:38 117:-8 121:72
lead	27:-18 29:-15 32:57 49:-16 55:-8 56:-15 58:82 61:82 62:-10 63:-10 117:-8 121:70
the lead	29:-10 32:51 61:10 121:13
lead time	27:-17 29:-11 32:60 117:-8 120:10 121:23
time from	28:19 32:16
from ~	10:-8 11:-9 31:-9 46:-8 50:27 100:-9 116:61 117:43 119:-15 120:60 121:21 122:48 125:-14
time of	32:32 99:14 109:11
what supplier	32:37
supplier are	32:29
which supplier	10:12 32:38
supplier have	32:23
supplier do	32:25
term==s	32:70 63:12 117:-9
term	32:70 63:12 117:-9
the term	32:70 117:-9
term of	32:57 117:-9
history==	0:-23 3:-9 19:16 33:207 91:-10
happen==ed	5:-8 8:-10 9:-10 17:-8 20:9 29:-8 33:136
history	0:-23 3:-9 19:16 33:207 91:-10
^ history	33:116 91:-9
happen today	33:8
@job piec	33:8 36:26 70:-11
#r piec	36:-9 37:9
story==	20:-11 33:107
story	20:-11 33:107
the story	20:-10 33:78
story of	20:-11 33:107
#n sinc	45:13
history of	33:68 91:-9
#n the	4:-12 13:-24 16:-8 17:42 30:-13 43:-9 45:-25 47:30 50:9 74:89 79:9 91:24 93:82 95:34 97:-10 113:-11 114:-8 116:14 117:-12 125:-15
#n tomorrow	29:20 33:10 115:35 125:-10
^ story	33:30
#n next	111:16 113:18 115:8
the history	33:25
@job the	2:-12 5:15 17:23 45:-11 74:9 89:20 91:13 95:9 97:9
of piece	81:27
of number	16:15 38:8 90:10
@wire #r	118:9
sinc the	21:26 33:16 34:10 45:12 98:10
&#o@wire	20:8 21:-20 33:44 118:30
@person sinc	33:14
of next	11:-9 30:24 53:9 106:14 112:11
of today	8:9 54:8 98:29
history sinc	33:9
through $	27:36 33:20 52:41 77:31 81:28 89:-12 112:36
@job been	15:27
gone==	0:-13 20:20 29:-8 32:-8 40:9 42:13 57:21 62:62 63:-21 75:16 77:39 78:-11 81:15 82:-11 86:20 100:36 106:13 110:26 111:-15 122:35 125:-10
gone	0:-13 20:20 29:-8 32:-8 40:9 42:13 57:21 62:62 63:-21 75:16 77:39 78:-11 81:15 82:-11 86:20 100:36 106:13 110:26 111:-15 122:35 125:-10
happen on	16:19 17:-9 29:44
happen to	20:12 33:26 83:15
#n @day	45:-19 71:11 95:12 108:13 115:25
@job sinc	45:16
&@day@job	11:-19 30:12 47:106 115:15
happen with	33:20
@job #o	0:34 36:18 37:-9 45:28 78:21
@job tomorrow	33:11
was done	33:31
#n today	105:11
done with	11:16 17:17 25:-8 43:57 62:12 103:38 107:-13 108:-18 114:27 125:-13
done to	10:-8 13:29 33:22
to fret	71:-8 89:20 96:19
load has	33:29
load==s	33:24 55:17 73:11
#n get	36:31 37:-11
has slot	74:39
got in	0:12 8:49 12:-8
with number	0:-11 5:-8 36:-9 40:21 64:26 70:33 73:9 101:13
to number	10:-8 13:29
to #n	0:-18 1:-22 2:15 3:-16 4:83 5:-10 13:-14 16:75 17:18 18:-11 23:-8 27:-13 28:-16 29:-10 30:-13 33:-11 36:-19 38:-22 40:-16 41:-38 42:-14 43:-10 44:26 47:-13 52:64 53:28 54:74 55:42 61:-8 64:-20 65:-15 66:9 67:-15 69:13 70:9 71:37 73:-13 75:41 77:-9 78:-19 80:-10 82:-17 83:8 89:36 90:-10 91:-14 92:-24 93:27 95:-17 96:9 97:-15 98:-11 99:-16 104:34 105:54 107:-10 109:57 110:29 111:25 112:-8 114:-10 115:-10 117:-11 121:-9 125:-12
to #d	41:28 46:47 49:-19 50:-8 66:13 68:9 69:57 85:-19 87:18 92:-13
with #d	44:16 68:15
had==	4:-8 13:-10 19:31 35:19 39:-11 43:-10 44:16 45:42 62:8 66:-10 69:19 72:70 74:-12 77:14 80:9 108:38 112:13 115:-8 125:-13
had	4:-8 13:-10 19:31 35:19 39:-11 43:-10 44:16 45:42 62:8 66:-10 69:19 72:70 74:-12 77:14 80:9 108:38 112:13 115:-8 125:-13
who had	33:11 63:8
had #d	33:12
who took	15:42
took #d	33:13
who used	33:47
used number	33:8 36:11
used #d	33:9
who cut	33:33
seat==ed	24:12 41:-9 43:60 45:-9 77:-15 95:138
who seat	33:8
measur==ed	0:-9 1:-10 3:-16 36:-8 41:189 42:-39 45:-9 46:-13 50:-14 72:-10 76:37 79:21 80:99 82:-12 87:8 89:-14 92:46 93:-24 95:-13 117:21
measur the	66:9 74:8 80:10 88:11 92:16 125:8
seat the	43:14
who press	15:-17 16:-9 29:-10 33:79 44:-11 125:-13
made==	0:-10 2:12 3:-11 4:-13 13:10 17:-10 33:21 36:8 39:-9 41:-8 45:8 47:-10 48:29 70:33 71:13 72:-15 75:-15 78:129 80:-12 81:-9 82:42 85:12 91:-11 94:10 95:-8 124:36 125:-21
made	0:-10 2:12 3:-11 4:-13 13:10 17:-10 33:21 36:8 39:-9 41:-8 45:8 47:-10 48:29 70:33 71:13 72:-15 75:-15 78:129 80:-12 81:-9 82:42 85:12 91:-11 94:10 95:-8 124:36 125:-21
who made	33:8
made the	36:32 45:17 70:-14 82:19
made fret	3:-9 42:13 70:-19 71:33 78:-24 82:30
@job next	16:22 17:-12 113:24
#n #o	3:23 13:-17 29:48 36:28 42:8 114:13 125:-10
@job today	33:10
work==ed	9:9 15:-11 28:-15 29:30 33:25
do #r	16:10
did $	33:17
&#n@day@person	29:-12 52:-15 109:75 110:-9 111:40
&@job@person	12:-8 13:-8 15:-8 29:-8 33:23 61:-18 62:-10 63:-9 64:102 65:50 107:10 125:-8
do tomorrow	26:-9 29:36
i done	29:-12 33:48 68:10
do last	33:14
thing==	25:21 33:28 35:13 55:14 57:18 82:14 85:14 89:19 95:-9 98:33 99:-9 124:16
was the	25:33 33:42 125:-10
thing	10:8 11:11 25:20 29:-12 33:37 35:35 48:9 55:13 57:18 58:18 82:14 83:8 84:11 85:14 89:19 95:-9 98:32 99:-10 124:15 125:-10
last thing	33:29 124:17
thing $	33:12
entry==	33:12 60:12 124:55
entry	33:12 60:12 124:55
last entry	33:13 124:22
entry $	33:12 60:12 124:48
my history	33:23
history $	0:-17 33:71
all happen	33:32
did what	75:8
what today	29:50 33:-14
not==	0:-20 1:-38 3:9 5:-13 6:-15 7:-10 8:-18 9:-28 10:-23 11:-23 13:-21 14:-21 15:-20 16:-34 17:-19 18:-12 19:-15 20:-9 21:-10 22:11 25:-15 26:-26 27:-20 28:-34 29:-36 30:-23 32:-34 33:-48 34:109 35:-18 37:-24 38:68 39:-20 41:-20 42:-15 43:-44 44:-17 45:-19 47:9 48:24 49:-10 51:23 52:-29 53:41 54:-13 57:33 59:-18 60:51 61:-18 62:42 63:-33 64:-57 65:12 66:-23 69:11 70:-10 73:-39 75:-12 77:22 78:-12 79:22 80:-10 82:-22 83:-16 85:-11 86:33 87:39 89:26 90:-9 91:56 92:-10 94:14 95:-15 96:-10 97:-15 98:-13 99:-14 100:14 101:60 102:20 103:-8 105:-28 106:45 107:-31 108:29 109:16 110:75 112:76 114:44 116:-22 118:-11 119:98 120:-14 122:63 123:100 125:183
)~",
R"~(understood==	33:-16 34:107 123:87 125:-29
not	0:-20 1:-38 3:9 5:-13 6:-15 7:-10 8:-18 9:-28 10:-23 11:-23 13:-21 14:-21 15:-20 16:-34 17:-19 18:-12 19:-15 20:-9 21:-10 22:11 25:-15 26:-26 27:-20 28:-34 29:-36 30:-23 32:-34 33:-48 34:109 35:-18 37:-24 38:68 39:-20 41:-20 42:-15 43:-44 44:-17 45:-19 47:9 48:24 49:-10 51:23 52:-29 53:41 54:-13 57:33 59:-18 60:51 61:-18 62:42 63:-33 64:-57 65:12 66:-23 69:11 70:-10 73:-39 75:-12 77:22 78:-12 79:22 80:-10 82:-22 83:-16 85:-11 86:33 87:39 89:26 90:-9 91:56 92:-10 94:14 95:-15 96:-10 97:-15 98:-13 99:-14 100:14 101:60 102:20 103:-8 105:-28 106:45 107:-31 108:29 109:16 110:75 112:76 114:44 116:-22 118:-11 119:98 120:-14 122:63 123:100 125:183
^ not	13:18 33:-8 34:40 53:62 110:19 112:-15 113:9 123:-11 125:-36
understood	33:-16 34:107 123:87 125:-29
not understood	33:-12 34:87 123:68 125:-28
understood sinc	33:-13 34:48
sentence==s	34:48 123:55 125:-18
understand==	18:15 19:-9 33:-24 34:87 123:38 125:-15
sentence	34:48 123:55 125:-18
which sentence	34:26 123:-8
was not	34:9 123:33 125:-8
understand	18:15 19:-9 33:-24 34:87 123:38 125:-15
not understand	33:-10 34:32 123:39 125:-14
understand $	19:-8 33:-12 34:65 123:38 125:-14
understand sinc	33:-12 34:22
what were	20:10
were not	34:42
sentence were	34:14
understood $	34:59 123:90 125:-25
sentence that	34:10 123:38
that were	34:21 44:8 50:20
the sentence	123:28
me sentence	34:17
sentence not	34:11 123:26 125:-8
show sentence	34:17 123:-10
ask==ed	33:-8 34:18 88:10 125:35
did peopl	34:9
ask	13:11 24:-9 30:-8 33:-15 34:17 35:50 40:15 121:18 125:30
peopl ask	34:9
ask that	24:-9 34:18 35:10
that nobody	22:13 34:14 123:21
nobody understood	123:22
that you	34:12 123:19
you did	34:-13 123:46 125:-8
did not	2:-9 33:-12 42:-11 72:10 89:-9 90:-15 123:45 124:23 125:80
was say	34:16
say that	34:16
nobody understand	33:-14 34:56
have you	10:14 34:27
you not	34:27
help==	2:14 6:-21 35:200 55:-8 80:10
topic==	35:16
help	2:24 6:-21 33:-8 35:200 55:-8 80:10
^ help	35:170 55:-8
topic	35:16
topic ~	35:16
~ topic	35:11
help $	2:11 6:-21 35:61
i say	35:33
say $	1:-15 8:14 35:49 38:-8 40:-9 69:37 104:-12 116:8 125:36
ask==	1:8 13:18 24:-9 35:51 40:16 121:18
i ask	24:-9 35:16
ask $	35:34
we ask	35:29
help on	35:28
help with	35:38
with ~	35:20 56:26 57:-8 116:15 122:-9
help ~	35:13
setting==s	12:-11 14:-9 35:159
setting	12:-11 14:-9 35:159
the setting	35:84
setting $	35:105
^ use	1:-20 3:-18 36:143 37:-14 41:-11 70:-8 81:-8 82:74
use piec	0:-11 1:-18 3:51 33:34 36:-50 38:-8 125:29
@wire at	1:-9 5:13 36:13 39:-10 50:26 51:21 67:16 76:12 116:-12 125:-8
&#d#n#t@job@wire	36:10
^ take	1:-10 11:-13 24:-10 36:17 38:8 40:-8 47:21 48:-10 50:15 53:-15 57:24 59:-24 60:57 63:19 65:79 70:10 81:13 82:22 101:14 112:25 124:63 125:-13
take the	16:9 36:83 38:10 57:13 65:10 70:13 82:18 100:15 109:9 121:14 125:-25
^ used	36:75 37:-13 82:46
used #n	82:18
^ took	3:-9 36:22 37:-14 39:-8 43:14 82:59 87:18 95:11 97:34
took piece	36:19 37:-8 82:8
into==	0:-9 1:-12 3:-11 8:-8 33:-9 36:70 37:-10 39:45 40:11 42:8 45:-16 50:36 66:-11 70:27 71:-14 72:31 75:34 79:51 81:-13 82:47 89:-11 90:-10 91:-10 95:-8 96:12 97:-19 102:15 125:-12
^ put	1:-10 3:-11 18:-8 23:-14 33:-11 36:37 37:42 39:22 41:10 43:-9 55:20 58:14 64:41 67:8 82:-12 83:69 84:-22 102:23 105:14 107:-10 108:23 113:19 115:12 120:26 121:-9 125:-17
put number	1:8 36:10 37:15
into	0:-9 1:-12 3:-11 8:-8 33:-9 36:70 37:-10 39:45 40:11 42:8 45:-16 50:36 66:-11 70:27 71:-14 72:31 75:34 79:51 81:-13 82:47 89:-11 90:-10 91:-10 95:-8 96:12 97:-19 102:15 125:-12
#n into	36:49 70:-19 71:-8 72:13 75:41
into slot	0:9 3:-8 36:51 70:-23 82:56 97:-8
#d into	36:16 70:9
^ piece	22:19 23:-11 36:15 38:33 40:10 81:19 82:19 125:-12
#n goe	36:30 40:29 42:-9 64:21 89:-13 91:-9 93:38 113:9
goe in	4:30 36:33 39:8 40:24 42:-9
went==	0:-20 3:-10 8:-14 16:-12 20:40 21:-23 29:-9 33:26 36:38 40:28 44:24 45:17 50:-8 66:18 70:12 75:11 80:11 81:-12 82:16 89:-8 95:8 96:-8 97:-10 99:14 118:12
went	0:-20 3:-10 8:-14 16:-12 20:40 21:-23 29:-9 33:26 36:38 40:28 44:24 45:17 50:-8 66:18 70:12 75:11 80:11 81:-12 82:16 89:-8 95:8 96:-8 97:-10 99:14 118:12
went into	36:9 70:18 82:21 97:-8
@wire went	70:22
goe into	40:15
#d goe	40:9
#n went	36:23 40:26 97:-8
went in	3:-8 36:12 40:25 72:10
^ number	0:-9 36:45 40:21 60:13 81:15 82:-14 92:16 95:25 96:-9 101:-9 102:13
^ hold	0:-9 23:-17 36:-38 37:151 43:-9 83:86 84:-25 89:48 90:-15 114:27
hold $	14:-8 18:16 23:109 35:-12 37:76 84:-15 125:-13
#d at	37:8 41:11 76:16 81:8 82:-9
yesterday piec	36:-8 37:9
hold #n	36:-11 37:15 38:21 121:12 125:-14
&#d#n#r@job@wire	36:-9 37:9
^ keep	0:-10 1:-10 3:-11 36:-23 37:81 38:-24 51:-17 76:11 83:33 105:21 106:-20 125:112
keep #d	37:15
reserv==e	0:-14 16:-11 23:-16 29:9 36:-22 37:97 43:-9 73:-10 83:68 84:16 105:38
^ reserv	0:-13 23:24 36:-13 37:76 43:-8 83:58 84:-17 105:15
reserv #n	37:26
hold number	37:10
keep number	37:27
reserv piece	23:33 37:14
hold piece	37:12
reserv the	37:9 73:-8 84:31 105:28
keep #n	40:17 91:11
&#d#r	37:10
let==	1:-20 11:-15 13:-10 28:9 29:-13 32:25 33:-11 36:-11 38:89 40:-8 43:-10 45:9 52:14 53:-12 55:17 58:10 62:18 65:62 80:-10 83:-15 84:84 104:23 107:-10 110:-22 111:-18 112:-17 114:45 115:-10 124:-8 125:88
let	1:-20 2:10 11:-15 13:-10 27:-11 28:9 29:-13 32:25 33:-11 36:-11 38:89 40:-8 43:-10 45:9 52:14 53:-12 55:17 58:10 62:18 65:62 80:-10 83:-15 84:84 104:23 107:-10 110:-22 111:-18 112:-17 114:45 115:-10 124:-8 125:88
^ let	1:-14 11:-13 36:-8 38:73 43:-9 53:-8 54:8 63:10 64:10 65:43 83:-13 84:97 104:27 112:-14 114:46 125:15
let go	38:76 45:15 84:14 125:21
go #d	38:12
ago at	84:25 115:-11
go of	38:31 84:18 125:28
let #d	38:11
let #n	2:14
^ free	23:-51 29:-33 38:55 65:83 84:72 106:72 125:-9
free #d	38:31
unhold==	38:112
unhold	38:112
^ unhold	38:112
unhold #d	38:34
releas==e	23:-20 38:101 40:-8 64:-23 65:47 73:-11 83:-29 84:114 106:34 113:-10 125:-14
releas	23:-20 38:101 40:-8 64:-23 65:47 73:-11 83:-29 84:114 106:34 113:-10 125:-14
^ releas	23:-20 38:89 64:-21 65:51 83:-27 84:63 125:-11
do not	2:8 4:9 10:-13 17:-14 22:19 23:-10 28:-8 32:-20 37:-12 38:14 51:27 53:29 57:26 64:-31 65:-9 69:-13 84:18 86:17 100:20 101:17 103:-15 105:-14 110:33 113:-18 114:17 119:-11 121:13 122:41 125:105
not hold	18:8 37:-10 38:34 84:30 91:9 125:-27
any more	9:-10 11:-8 23:-9 38:49 42:18 47:28 53:-13 57:15 60:19 62:40 63:-9 65:11 84:30 86:19 87:22 100:34 106:13 109:18 110:-10 111:-8 112:25 113:12 121:10 122:10 125:-56
more $	1:-12 11:-8 28:-8 29:-11 31:-8 32:-8 38:49 47:28 62:24 63:27 65:15 84:14 86:20 87:23 95:-8 99:-12 100:38 101:-9 102:51 106:10 109:20 110:-13 111:-10 114:18 121:10 122:9 125:-20
^ no	0:15 1:-13 4:-12 6:-8 8:49 9:-8 11:-14 13:-14 15:-8 16:64 17:-10 22:-11 23:-19 25:-9 26:-13 28:-25 29:-16 30:-14 33:-11 36:-10 37:46 38:23 40:-13 43:-12 45:-9 47:19 52:27 53:39 54:-13 57:35 62:26 65:-12 70:-11 75:-12 83:-13 84:27 87:14 89:26 90:23 91:25 93:36 95:-8 97:-14 99:-16 100:-9 101:82 102:-10 105:-15 106:-16 107:-8 108:-11 109:15 110:9 111:-14 112:-9 113:47 114:-21 118:-8 122:23 124:22 125:60
no one	38:31
one want	38:21
want the	6:9 7:16 103:28 106:14 114:14 125:16
^ nobody	1:-10 15:-8 36:-11 37:17 38:46 52:-9 53:21 55:16 57:14 65:66 86:8 125:27
nobody want	36:12 38:43 65:-9 81:10
want #n	30:21 38:19
is not	8:-8 12:8 13:-9 14:-10 23:-17 25:-10 31:-11 38:43 42:-10 47:18 48:-9 53:-30 59:-14 60:57 63:-17 65:13 67:8 77:-10 79:-12 87:47 93:-10 94:35 101:-35 102:29 106:23 109:-9 110:28 112:54 113:21 114:-9 119:54 125:8
not need	10:-9 17:-9 38:45 57:30 84:13 100:13 103:-12 106:67 125:-43
need any	38:20
not held	23:-11 38:33 125:-11
longer==	1:-13 3:-8 23:-11 25:-10 36:-16 37:-11 38:54 40:-11 54:9 59:-8 60:23 62:46 65:15 69:28 81:11 84:37 86:28 87:14 89:-8 92:-8 99:-14 100:61 101:-11 106:33 113:-14 114:31 115:16 120:-11 122:35 125:-21
longer	1:-13 3:-8 23:-11 25:-10 36:-16 37:-11 38:54 40:-11 54:9 59:-8 60:23 62:46 65:15 69:28 81:11 84:37 86:28 87:14 89:-8 92:-8 99:-14 100:61 101:-11 106:33 113:-14 114:31 115:16 120:-11 122:35 125:-21
no longer	23:-9 25:-8 38:20 62:49 65:-8 84:38 86:28 87:19 99:-8 100:30 106:35 113:-10 114:26 120:-10 122:36 125:-23
)~",
R"~(want any	47:8
longer need	38:22 100:-17 106:42
add==	1:-16 9:-14 20:40 22:-8 32:-11 35:10 38:-11 39:124 49:43 50:-24 55:-10 56:69 57:-36 58:48 66:-10 68:-9 79:8 80:-8 81:-8 98:78 100:-8 120:80 121:-56 122:-10 125:40
tang==	3:-8 13:-8 18:29 40:24 49:31 80:-9 88:84 91:99 98:-13 101:9
add	1:-16 9:-15 20:39 22:-8 32:-12 35:10 38:-11 39:124 49:43 50:-24 55:-11 56:69 57:-36 58:48 66:-10 68:-9 79:8 80:-8 81:-8 98:78 100:-8 120:100 121:-57 122:-12 125:40
^ add	1:-8 39:122 49:41 50:-14 55:-8 56:66 57:-33 58:48 66:-9 68:-8 98:69 120:50 121:-45 125:-13
#d count	41:-17 80:-18 82:38
count #n	39:8 41:-26 45:-12 47:-16 50:13 69:-8 72:52 78:-12 79:12 80:-25 81:9 82:33 98:21 116:39 117:14 120:-10
pulled_fret	39:9
in length	41:14 42:-10 46:-9 81:10 82:16 120:10
stick_end	39:10
@wire count	5:-10 39:17 50:21 66:-27 69:-12 79:26 81:9 82:-17 116:9
tang	3:-8 4:-8 13:-10 18:28 40:24 49:31 80:-9 88:84 91:99 98:-13 101:9 107:30
tang #d	49:14 80:-8
count #c	5:-8 39:10 41:-17 45:-12 47:-11 50:18 66:-11 69:-9 72:35 79:20 80:-15 81:38 82:-13 98:13
&#c#d#n@wire	50:8 68:10 82:10
add wire	49:16
in count	81:25 82:-27
radius #d	41:14 42:-9 46:65 49:-38 85:9 98:-13
mm count	41:-12 80:-12 81:20
#c length	41:-8 80:-9 81:24 82:-8
add #n	39:30 98:43
add #d	39:33
in ~	39:18 55:32
lot==	1:15 3:-8 4:-8 5:12 7:10 13:-17 16:-12 17:-8 19:13 20:-8 23:9 29:-8 37:-17 39:11 43:-16 44:25 48:-8 65:-11 71:25 73:214 81:8 83:39 84:62 93:-9 96:-8 108:-10 113:-15 114:-18 125:20
from lot	73:49 125:40
lot #n	39:8 43:-8 71:11 73:106 114:-8 125:40
of lot	73:17
@wire lot	19:12
lot #c	71:18 73:66
&#c#d@wire	50:-20 67:9 68:92 82:13
from number	75:-10 82:25
drop==	13:-19 16:-10 17:-12 25:-15 26:-19 29:-14 32:-17 33:-8 35:-8 38:20 43:-15 47:29 48:105 55:-8 57:71 60:11 84:40 85:-8 86:55 99:-12 100:99 102:-10 103:-13 106:13 113:9 114:-8 120:-15 121:-8 122:78
drop	0:10 1:-14 13:-20 16:-10 17:-13 23:-8 25:-16 26:-19 29:-14 32:-17 33:-8 35:-8 36:-12 38:19 39:32 40:-8 43:-15 47:29 48:105 51:29 55:-8 57:70 60:10 65:-8 84:40 86:55 87:-8 91:-8 98:-9 99:-13 100:99 101:-8 102:-10 103:-14 106:13 108:-8 113:9 114:-9 120:-15 121:-8 122:77
^ drop	13:-16 16:-9 17:-12 25:-13 26:-18 32:-17 38:20 43:-15 47:29 48:108 57:73 60:11 79:8 84:41 86:64 99:-11 100:79 103:-11 106:18 113:-13 114:-8 120:-15 121:-8 122:78 125:-30
in tin	79:12
^ throw	22:-9 40:75 81:41
@wire into	36:-11 39:53 50:8 82:32
into the	0:-13 5:-8 18:9 39:31 40:19 42:12 45:-8 70:21 72:36 75:9 77:9 79:19 81:-8 90:-8
add a	1:-11 35:15 39:10 49:16 56:23 57:-9 58:12 98:10 120:9 121:-10 125:18
add #c	39:14
#c piece	79:8
#n piece	39:14 79:10 81:19 82:-11
each $	6:-10 8:16 16:20 25:8 39:14 70:-19 82:28 116:8
mm each	50:18 66:14 82:-12
#c short	39:12
@wire each	19:10 66:15
each #n	14:35 17:-10 116:9
each #d	50:10 66:17 116:11
@wire #n	66:19 117:18
@wire #d	88:29
#n short	3:-8 41:-13 42:15 45:-9 71:-9 75:47 89:-12
raw $	3:21 39:9 42:8
dress end	3:10 72:-9 78:10
both==	1:19 5:-9 8:9 25:-9 29:18 39:29 40:-12 41:-8 70:28 81:15 82:23 83:11 101:15 102:24
both	1:19 5:-9 8:9 25:-9 29:18 39:29 40:-12 41:-8 70:28 81:15 82:23 83:11 101:15 102:24
both end	1:30
drop==ped	39:31 77:9 117:11
into $	39:16
chuck==ed	79:56 81:32 82:-27 125:-11
chuck	1:-10 38:-11 40:86 79:58 81:23 82:-27 125:-15
^ chuck	38:-10 40:70 79:48 81:-10 125:-9
chuck #d	39:8
into tin	79:26
threw==	22:-9 38:-9 39:11 40:111 57:13 78:13 79:23 81:-8 86:10
threw	22:-9 38:-9 39:11 40:111 57:13 78:13 79:23 81:-8 86:10
^ threw	39:15 40:33 79:20
threw #d	39:14 40:37
across==	16:9 19:17 39:11 41:30 42:8 44:-10 61:13 76:32 85:16 88:9 89:11 92:-8
their==	9:34 17:-10 19:24 26:18 51:-8 81:16 82:-11 103:9 118:13
@wire measur	39:15
across	3:-10 16:9 19:17 39:11 41:57 44:-10 46:-9 61:13 76:32 80:13 85:16 88:9 89:11 92:-9 93:-8
measur across	41:18 42:10 46:-8 80:8
their	9:34 17:-10 19:24 26:18 51:-8 81:16 82:-11 103:9 118:13
mm in	0:35 8:-11 39:-14 41:9 66:26 76:11 81:14 85:11
bent==	5:-8 18:28 39:10 41:24 42:10 43:23 44:-10 50:-9 66:9 77:9 81:10 91:74 94:12 125:-13
across end	41:13
bent	5:-8 18:28 39:10 41:24 42:10 43:23 44:-10 50:-9 66:9 77:9 81:10 91:74 94:12 125:-13
bent to	5:-8 18:26 41:26 42:11 44:-9
its==	0:-9 1:40 2:-12 3:-12 5:8 6:11 8:-9 13:-10 15:-8 17:-11 18:25 22:-9 23:-9 28:-8 29:-8 31:25 32:38 33:-8 41:-12 43:-14 45:24 48:-8 50:9 54:15 60:12 73:9 83:15 85:9 87:66 88:17 89:14 91:29 92:27 93:36 101:31 103:11 115:-11 121:-11 122:10 125:-28
its	0:-9 1:40 2:-12 3:-12 5:8 6:11 8:-9 13:-10 15:-8 17:-11 18:25 22:-9 23:-9 28:-8 29:-8 31:25 32:38 33:-8 41:-12 43:-14 45:24 48:-8 50:9 54:15 60:12 73:9 83:15 85:9 87:66 88:17 89:14 91:29 92:27 93:36 101:31 103:11 115:-11 121:-11 122:10 125:-28
across its	41:17 88:11
its end	1:40
tin #d	22:-8 39:40
&#c#n@wire	1:-8 50:11 51:16 66:25 67:19 68:50 116:12 117:-11
short==s	79:60
^ scrap	1:-11 38:-8 40:149 53:-8 81:83 82:-19 98:-16 100:20 112:37
why ~	40:31 48:14 77:32
~ why	40:14
scrap piec	1:-10 22:66 125:-10
scrap piece	40:27 81:-14
scrap #d	40:9
becaus==e	0:-8 8:-12 23:23 28:-9 40:30 43:-10 48:48 53:77 55:-11 65:-9 69:72 76:8 77:34 81:28 82:-9 95:11 96:-11 101:60 108:10 110:54 112:-21 117:-24 118:-9 119:76 125:-43
scrap #n	40:35 81:23
becaus	0:-8 8:-12 23:23 28:-9 40:30 43:-10 48:48 53:77 55:-11 65:-9 69:72 76:8 77:34 81:28 82:-9 95:11 96:-11 101:60 108:10 110:54 112:-21 117:-24 118:-9 119:76 125:-43
#n becaus	40:24 77:22 81:-15
becaus ~	40:20 48:17 53:56 55:-10 69:39 77:35 81:25 101:63 110:45 112:-14 117:-9 119:44 125:-13
scrap the	98:-14 100:22 112:38
#d becaus	40:14 81:-8
@wire becaus	81:20
bin piece	81:21
bin #n	40:26
bin the	40:-10 81:40 125:10
throw #d	40:31
#d away	40:26
@wire out	39:-8 40:8 82:32
throw number	40:30
#n away	40:38
#n out	5:12 36:43 40:23 48:36 65:-10 70:16 71:19 72:18 78:-14 81:12 82:-24 87:26 91:-12 95:-11 125:11
@wire away	40:8
i threw	40:45 86:10
threw piece	40:12
we threw	40:35
threw #n	40:21
threw number	40:17
threw out	40:17
#d out	40:14 80:9
threw the	78:14 86:11
no good	40:42
^ measur	3:-16 41:136 42:-14 75:-9 76:-9 78:-12 79:-10 80:87 89:-9 92:8 93:-8 95:-8 125:-8
measur job	41:27
across length	41:8
straight	0:14 8:8 9:-9 13:29 41:56 42:-11 45:-8 52:41 75:-11 78:-11 89:22 93:-10 94:116 95:-15 125:18
measur straight	39:8 41:42 42:-10 78:-9 93:-8
#n bend	41:30
radius #n	41:20 46:24 49:-13
across job	41:19
@job bend	41:8
in measur	41:8
straight slot	41:23
#d measur	42:13
@job measur	0:-14 4:42 41:22
^ fret	0:-26 2:8 3:-44 16:-18 17:-51 24:-11 33:-16 36:18 41:103 42:60 44:12 45:40 70:-26 72:-23 73:25 75:31 77:74 78:10 80:-12 82:-9 89:45 90:19 91:-41 96:-13 125:34
@job measure	41:21 76:23
#n measure	41:31 76:13 77:-12 92:-10 125:59
mm at	3:13 46:16 92:10
in at	19:12 41:9 67:9 72:12 76:17 87:-13 110:25 111:-8
mm across	41:21 49:8 88:10
#d across	41:12 44:-9 76:29
came==	0:-12 2:10 3:-29 8:-13 11:-8 13:-10 16:-11 17:-15 20:20 21:-15 24:54 33:-11 35:16 36:-11 39:-18 42:86 44:8 45:37 50:117 60:-8 62:-9 63:33 66:-8 67:-32 70:20 71:19 79:10 89:-8 91:-9 92:-9 110:-11 112:-8 117:148 118:-11 125:-13
came	0:-12 2:10 3:-29 8:-13 11:-8 13:-10 16:-11 17:-15 20:20 21:-15 24:54 33:-11 35:16 36:-11 39:-18 42:86 44:8 45:37 50:117 60:-8 62:-9 63:33 66:-8 67:-32 70:20 71:19 79:10 89:-8 91:-9 92:-9 110:-11 112:-8 117:148 118:-11 125:-13
^ came	3:-10 42:34
came short	3:-10 42:38
short slot	42:22
@job short	45:-10 71:-13 75:34
short by	3:-18 42:51
#n if	2:13 3:-9 5:9 16:19 17:-9 42:9
if short	3:-13 42:26
short ~	3:-13 42:26
short job	42:9
@job came	42:13 72:9
came out	2:13 3:-12 35:13 42:43 62:-8 63:34 72:8 110:-10
out short	35:13 42:9 125:13
#o came	42:12
#n came	2:14 3:-15 36:-9 41:-8 42:28 45:50 70:21 71:22 117:13
out too	42:-15 125:24
measur==e	0:-15 2:14 4:37 39:-8 72:19 79:13 80:-10 125:54
short it	42:9
#o is	53:12 91:9 93:13 97:9
#r is	78:17 89:19 93:11
short is	86:19
out #d	41:-11 42:30
mm short	42:20
out #n	81:15 95:13
&#d#o	42:21
end==ed	36:19 42:32 62:17 122:11 125:-11
#o end	42:20
end up	36:18 42:32 125:-11
up #d	42:26
turn==ed	6:9 41:-11 42:52
turn	0:-11 6:8 11:-10 29:35 31:21 41:-11 42:52 84:21 101:12 102:9
#n turn	29:39 42:31 102:9
turn out	41:-11 42:53
out at	2:15 42:43 91:9
)~",
R"~(@job turn	42:22
#d with	3:9
^ short	42:27
^ too	3:30 41:-9
have cut	0:-8 6:-11 42:13 43:13 71:32 78:9
@job too	42:41 78:-12
cut slot	70:34 71:20
short at	0:11 3:8 42:10
#n too	0:-10 1:8 6:61 42:10 90:52 91:15
^ finish	43:76 44:49 107:-12 114:-9
finish job	125:34
#t job	108:9
#n stag	43:17 108:8
stag pull	43:8
pull job	72:9
start #n	43:9
#n start	43:15 107:-11
start tomorrow	43:10
@job stag	108:9
stag polish	104:15
seat job	43:26 107:19 125:21
crown stag	103:12
pull $	43:19 72:37 77:47 107:15
file	3:10 4:11 16:17 43:17 97:17
bend $	43:18
finish pull	43:16
#n this	95:10 101:21 107:33 117:14
file on	97:17
@job this	43:12 45:14 87:10
level with	97:11
@job #n	0:20 2:-9 3:10 4:-17 13:-11 16:-11 17:-12 29:-10 36:-30 37:14 41:24 43:13 44:-8 45:-9 48:-12 65:-10 70:-9 71:-10 75:26 77:53 82:45 90:30 91:29 92:45 95:23 97:-19 108:23 113:-18
@job @day	44:13 47:19 71:10
&#n@day@job	44:12 46:-8 47:15 53:14 96:9 105:9 107:13 112:-10 115:15
finish bend	43:11
bend for	107:33 108:19
the pull	107:15
pull is	43:18
is finish	29:-9 43:18 44:32 102:15 114:40
finish of	43:11
^ nip	104:17
are finish	31:8 43:8 108:11
^ crown	19:11 27:50 39:-9 88:53 90:19 103:46
crown are	19:9 81:12
are done	43:9 108:-10 125:19
done of	43:14
the nip	103:21
the seat	27:12 108:16
seat is	103:11
finish for	11:24 29:-22 43:8 108:23
@job yesterday	43:26 95:20 96:9 125:33
the corner	27:52 43:11 103:9 104:39 108:-8 125:15
corner is	103:28
#n #n	3:-9 17:-8 36:-9 41:41 45:-14 80:80 82:8 88:21 91:27 96:21 107:-9 108:24 115:12 125:-9
^ @job	0:15 1:-16 2:15 5:-17 6:41 13:16 15:-19 16:27 17:-12 23:-14 24:-9 26:-9 27:-22 29:-17 30:-9 33:-20 36:9 37:-18 38:-10 41:-10 42:-8 44:9 45:12 46:-13 47:56 48:20 64:-17 65:48 70:18 71:25 73:9 74:22 76:39 77:43 81:-9 82:-10 83:-17 84:37 87:17 90:-11 92:13 93:-13 94:32 95:-16 97:23 105:-8 107:-31 108:-9 113:70 114:13 115:-10 118:-8 125:44
the bend	43:35 100:39 103:8 104:11 108:13
bend is	43:13 104:35
the crown	8:21 9:-11 16:38 19:11 45:-9 73:10 81:10 82:-10 88:13 90:61 103:11 104:11 108:8 117:9
is cut	43:39 71:14
polish $	43:8
file $	4:12 16:21 43:9
is bend	107:23 125:-8
corner $	27:28 43:8
is level	43:9 45:19 97:11
is seat	43:9 95:18
seat $	95:18 107:44
^ done	43:12 44:45 72:25 95:26 108:24
with dress	3:10 72:-9 78:10
dress of	107:-14 108:22
with cut	5:10
corner on	43:21
crown of	8:29 9:-10 82:-9 88:13 90:28
&#n#t	28:-9 52:12 71:15 75:-13 101:10 108:15 111:17 115:49
all fret	45:13
&#t@job	43:8 44:22 107:10 108:13 115:9
all for	0:23 6:-14 37:-9 43:27 83:18 84:-8
@job has	3:-11 13:-8 27:26 33:-8 41:23 47:45 48:-33 65:32 72:-10 78:38 114:-8 125:63
been cut	43:9
are cut	43:10 70:12 71:27 74:10
have been	11:-9 13:-9 23:52 71:-8 74:10 75:14 91:10 101:16 118:8
cut #n	1:9 5:-12 6:9 70:10 71:-18 78:53 82:-9
cut @day	71:9
is all	5:-12 13:-8 20:23 45:36 66:8 69:19 71:13 73:10 90:13
done yesterday	44:9
finish #n	43:19
^ seat	43:30 95:52 99:-8 103:50 104:33
seat all	43:8
#n yesterday	36:17 40:12 70:-9 97:14 107:30 115:8
seat fret	43:11 95:60
true on	43:61 107:-9
am finish	43:26
finish with	43:35
with tru	108:13
tru fret	43:10
tang==s	107:33
have done	11:23
with pull	43:10 108:49
the tang	18:32 40:15 88:38 91:15
tang of	49:8 88:28
we are	0:10 11:-19 28:-35 29:-14 31:-8 48:26 49:10 52:24 53:28 54:37 102:11 107:44 108:20 109:21 112:38 118:17 122:8 125:13
am done	43:20 107:-9 108:10
finish doing	43:12
doing the	4:-10 15:13 32:12 104:16 107:25
i are	108:16
we am	108:30
with check	107:8
pull #n	72:46 95:-12
pull this	43:12
^ tru	13:-10 43:64 94:16 104:9 107:32
^ bend	103:17 104:35 108:34
^ pull	43:45 72:156 75:-10 103:45 104:11 107:25 125:-8
done #n	27:8 44:11
^ true	43:9 104:18
true is	43:9
pull done	43:12
done @day	45:13 115:-8
@person is	28:-18 29:-28 30:16 43:-18 59:15 60:-8 61:41 62:34 63:33 64:-15 83:8 102:-8 107:41 109:11 110:68 111:42 125:13
@person has	26:-14 29:-17 33:28 36:-8 37:9 43:44 59:12 60:-9 61:-11 62:32 64:-15 65:-20 68:10 103:10 105:54 106:10 107:40 109:17 110:-11 111:-18
board job	108:9
tru==ed	43:58 65:23 87:-8 94:15 107:14
has tru	43:23 107:-16
has pull	43:11 107:-8
^ check	0:-14 3:31 41:14 91:17 94:8 115:35
is pull	43:43 95:17
pull tomorrow	108:13
dress #n	0:10 1:9
next ~	44:11
pound job	16:-8 44:14
#r for	47:12 70:15
&#c#n#o	44:11
#n to	0:-19 1:-20 2:16 3:-17 4:46 5:-9 10:-8 11:-14 13:-15 15:-9 16:82 17:17 18:-9 27:-10 28:-15 29:-20 30:17 33:-17 36:-19 38:-20 39:-10 40:-15 41:-39 42:-17 43:-10 44:18 50:-8 52:73 53:9 54:71 55:-17 61:-9 64:22 65:-13 70:16 73:-10 75:78 77:-9 78:-12 82:-15 83:21 89:49 90:-10 92:-8 93:-14 95:-25 96:9 97:-15 98:-10 99:-27 101:-18 104:-8 105:88 107:-11 109:68 110:-15 111:34 113:-8 114:-9 115:8 117:-15 118:69 120:-17 125:18
them==	0:-11 1:-9 2:43 4:-9 5:-9 8:-19 10:-11 11:-8 13:19 16:35 20:-10 22:16 25:23 27:-11 29:-13 35:-9 41:-13 50:-20 52:21 66:12 72:52 74:18 78:-17 79:24 81:23 83:24 88:9 89:-8 91:-8 92:9 95:8 98:35 100:13 102:15 107:-11 108:8 110:-9 111:-14 116:-9 117:31 120:-15 121:25 122:33 125:-9
them	0:-11 1:-9 2:43 4:-9 5:-9 8:-19 10:-11 11:-8 13:19 16:35 20:-10 22:16 25:23 27:-11 29:-13 35:-9 41:-13 50:-20 52:21 66:12 72:52 74:18 78:-17 79:24 81:23 83:24 88:9 89:-8 91:-8 92:9 95:8 98:35 100:13 102:15 107:-11 108:8 110:-9 111:-14 116:-9 117:31 120:-15 121:25 122:33 125:-9
press it	44:19 102:-9 125:20
it under	119:10
it again	38:12 44:13 86:14 102:-9 125:18
again yesterday	44:9 115:9
again tomorrow	102:12
press that	17:-8 106:11
it at	32:12 103:10
^ that	1:-10 13:-9 36:32 40:18 43:35 44:9 60:10 77:-8 80:10 86:8 93:-9 96:8 108:16 112:12 113:21 125:-8
were press	44:8
it are	98:16
are press	44:18
^ they	54:12 64:11 112:9 113:19
pass at	3:23 16:-12
pass is	44:18
only got	44:60
^ only	1:68 2:14 4:84 13:-11 16:-15 17:-9 22:61 33:30 44:42 45:60 54:-8 55:-8 66:18 89:-12 99:19 107:-12 111:-14 117:11 118:-13 125:-8
only came	44:14
came up	13:-8 17:-10 24:61 42:15 44:9
#c on	44:42 59:11 60:9 101:10 110:-10 118:9
came to	41:16 68:11
of them	8:-14 16:49 25:19 50:-8 52:22 72:17 98:40 111:-8 117:33
it with	72:26 77:34
lot with	19:17 44:9
#c #n	44:9 81:11 82:14
got press	44:19
@job was	17:-14 36:9 70:-9 71:11 73:14 97:18
was press	24:20 44:13 125:-11
press tomorrow	26:41 101:25 105:16 106:9 125:-10
finish press	43:-22 44:53
recheck job	11:30 17:-14 45:52 89:-20 115:47
from fret	41:-17 45:12 71:-15 75:31 89:17 95:-9
#o from	45:12 75:-10 89:12 110:-8 111:15
#r from	45:-8 54:9 75:28
from slot	41:-12 45:30 71:-8 75:33 89:-24
@job to	11:-10 13:-10 15:9 29:11 41:-14 45:22 64:50 71:-13 75:38 115:20
to slot	0:-16 2:-9 41:-10 45:25 75:90
#o sprang	45:13
sprang fret	45:13 75:-10
high #n	89:38
#n sprang	24:-15 45:79 89:-15 125:19
recheck the	45:46 89:-21 115:23
bass to	45:8
humidity==	45:46
recheck @job	45:16 115:31
humidity	45:46
humidity #n	45:30
@job sprang	45:24
trebl to	75:-9
still level	17:-19 45:65
fine==	0:9 3:49 42:-34 45:39 52:-8 55:15 88:-10 89:46 102:8 115:-11 125:21
fine	0:9 3:49 42:-34 45:39 52:-8 55:15 88:-10 89:46 102:8 115:-11 125:21
fine $	3:19 42:-11 45:32 89:46 125:24
level this	45:11
all still	45:10
level #n	51:9 97:13
still good	2:9
is good	45:12 77:23
back @day	101:-8 102:11
sprang $	45:27
back this	101:22 102:-9
back #n	102:26
back tomorrow	101:15
back again	45:10 63:14
#r sprang	45:12
up again	24:18 45:14 48:19 65:-18 102:30 107:43
is fine	42:-11 125:16
and fret	41:13 82:12 95:18 96:8
still high	17:14
proud==	13:-11 17:60 59:14 89:19 94:12
edge==	1:-13 4:-8 16:-20 17:12 45:27 75:-14 76:41 89:60 92:8
proud	13:-11 17:60 59:14 89:19 94:12
proud on	13:-10 17:30
edge	1:-13 4:-8 16:-20 17:12 42:19 45:26 75:-14 76:40 89:60 92:8
trebl edge	89:13
&#n#t@job	97:12 108:9 115:-9
edge #n	75:-10 89:20
#r are	54:9
edge $	27:8 76:21
and slot	120:9
stand proud	13:-10 17:62
show==s	3:11 45:8 67:25 90:12
@job show	45:9
show fret	45:11
proud $	17:31 89:22
say==s	1:-11 3:8 38:-8 40:-9 45:12 47:13 48:-9 50:11 55:30 59:17 69:33 92:18 118:12 125:16
say #n	11:9 32:11 69:21 118:12
rock==s	17:-27 45:64 75:-12 89:130 115:-15 125:22
rock	13:-8 17:44 33:-10 44:-8 45:63 75:-28 77:-8 82:-13 89:207 90:-8 93:-22 94:-8 97:-16 115:-18 125:50
rock on	16:-10 17:66 45:58 75:-13 89:13 115:-8 125:-19
)~",
R"~(@job it	26:9 77:8
it rock	45:15 89:39
and it	1:-15 3:18 36:12 41:-10 49:11 50:12 67:13 76:17 84:11 89:23 94:8 95:-11 96:11 97:9
#n it	36:37
#n through	4:36 44:15 45:-8 71:34 90:8 95:8
#n rock	16:-10 17:47 45:20 75:-8 89:-16 93:-17 125:70
through #n	4:35 20:19 44:15 71:34 90:8
#r rock	89:10
@job #r	71:11 90:30 91:10
#n -	0:17 3:-11 5:26 6:-16 7:8 11:-9 13:25 15:12 16:-19 17:12 18:9 24:10 27:39 29:28 33:28 36:-22 38:-13 39:8 42:-14 43:16 44:-16 45:-15 47:-8 48:30 64:9 70:11 73:16 75:-9 77:-16 83:17 84:-16 87:16 90:-11 91:-13 93:-14 94:8 95:-8 97:-13 107:19 114:22 125:-12
rock $	17:-12 89:99 93:-17 125:42
rock at	45:18 89:9
- fret	93:15
steady==	13:-9 17:-13 43:-24 45:98 75:-10 89:121
steady	13:-9 17:-13 43:-24 45:97 75:-13 89:127
all steady	43:-23 45:97
steady $	45:9 75:-10 89:105
is steady	17:-10 89:49
steady @day	45:16
steady #n	45:8
steady on	45:31
steady of	45:20
down @day	97:8
still down	45:14
down #n	97:11
scal==e	13:55 15:-9 39:-8 46:75 66:-9 67:54 68:24 69:-13 76:-8 88:-15
nut==	2:10 4:30 13:37 17:-11 36:12 46:59 48:-10 76:42 85:-19 87:90 89:25 90:-17 107:-9 108:-16
^ new	5:-9 13:-10 30:16 32:-8 41:-8 46:104 47:10 49:51 55:-8 58:83 59:-8 60:-19 71:35 98:58 118:16 120:40 122:-10 125:-19
scal	13:55 15:-9 39:-8 46:75 66:-9 67:54 68:24 69:-13 76:-8 88:-15
@wire scal	46:27 67:-16
scal #d	46:42 67:-25 69:-10
#c scal	46:12
nut	2:10 4:30 13:37 17:-11 36:12 46:59 48:-10 76:42 85:-19 87:90 89:25 90:-17 107:-9 108:-16
nut width	13:53 87:-8
scal #n	67:12
scal $	50:-9 67:12 68:35
flat==	13:-12 17:24 18:28 29:19 41:-26 45:27 46:34 49:-53 63:12 85:55 94:8 125:9
zero==	46:12 58:18
compound==	41:-9 46:29 49:-9 85:-11
~ for	50:9
for ~	46:8
~ radius	46:8
mm to	39:15 41:-9 46:26 85:-11 87:15
flat	13:-12 17:23 18:28 29:19 41:-26 45:27 46:33 49:-53 63:12 74:12 85:55 94:8 125:9
mm flat	46:12 49:-13
flat flat	46:16 49:-25 85:18
flat radius	46:42 49:-22 85:-14
flat bound	46:8
bound in	46:10
in #d	74:8
mm radius	46:19 49:-9
#d radius	46:11
zero	46:12 58:18
flat zero	46:8
zero fret	46:13
compound	41:-9 46:29 49:-9 85:-11
compound radius	41:-9 46:29 49:-9 85:-11
in flat	46:24 49:-9 85:-9
flat compound	46:10
mm compound	46:11
flat $	45:29 85:9 125:10
fret flat	46:8
radius $	85:10
division	55:18 68:11
^ set	11:-25 23:-48 47:59 55:65 68:10 73:-11 83:144 84:-28 98:10 99:44 104:13 125:-11
set due	11:-11 47:37
due #o	12:37 54:-8
due today	11:13 47:12
#n no	93:22
no day	47:23
due next	47:8
promis job	30:14 47:26
@job for	16:21 30:11 43:-13 46:15 77:19 108:24
^ move	47:9 115:11
move the	2:11 115:8
set the	23:-16 51:11 55:19 68:10 73:-10 83:38 84:-13 99:10 104:42 105:-11 115:14
chang==e	11:-9 14:-8 19:31 29:-8 33:-12 52:18 55:70 61:70 63:-8 98:-14 99:35 118:20 120:-8 121:26
chang	11:-9 14:-9 19:30 29:-9 30:8 33:-13 38:29 48:25 52:15 55:69 61:70 63:-8 65:-10 98:-15 99:34 118:20 120:-19 121:39 122:-8
^ chang	14:-8 38:30 52:18 55:50 58:-11 61:53 63:-8 98:-14 99:36 118:18 120:-8 121:28 125:-10
@job must	47:12 91:10
#n must	47:8 51:22 84:14 104:15 114:20
#n has	0:-15 27:-10 33:-15 36:12 40:25 41:-15 43:-13 47:31 48:26 65:-19 70:8 74:25 75:20 77:21 90:11 94:17 107:15 108:27 113:54 125:-16
time until	47:29
has until	47:9
promis tomorrow	47:9
promis #r	47:12
customer==	3:8 13:-8 23:18 47:25 48:15 125:29
customer	3:8 11:11 12:25 13:-8 23:18 47:22 48:15 125:29
^ customer	47:14
customer of	47:19
need it	1:8 36:-8 37:10 38:26 47:24 125:-11
it by	37:33 47:36
owner==	47:27 48:25
owner	47:27 48:25
^ owner	47:14
owner of	47:27
want it	38:8 47:38 106:19
@job want	47:19 83:12
it for	0:-13 1:12 3:10 36:-9 83:8 105:9 108:37
it on	39:11 47:19 50:16 67:-13
the owner	47:13 48:25
the customer	3:10 47:11 48:15 125:31
promis @job	47:36
have promis	47:10
has no	47:18 65:38 87:9 99:19 113:-18 121:17 122:-8
deadlin $	47:17
no promis	47:9
promis day	11:26 47:20 48:-9
no deadlin	47:29
deadlin any	47:14
day any	112:12
no date	47:15
not due	47:24
longer due	47:16
due any	47:11
take away	38:23 40:-8 47:13
away the	38:22 40:-18 81:20 125:16
day from	47:22 48:-9
remov==e	11:-12 25:-8 26:-8 29:-8 32:-13 40:14 47:15 48:33 55:-12 57:45 60:36 62:22 86:46 87:-8 94:-9 99:-11 100:85 103:-11 112:20 120:-9 122:49 125:-9
remov	5:-9 11:-12 25:-8 26:-8 29:-8 32:-26 40:13 47:15 48:33 55:-13 57:44 60:36 62:22 72:18 86:55 87:-8 94:-9 99:-11 100:84 103:-12 112:20 120:-10 121:-12 122:77 125:-9
^ remov	11:-11 32:-13 47:15 48:24 57:24 60:37 86:48 94:-9 100:62 103:-9 120:-8 122:53
remov the	48:26 60:38 86:14 94:-8 100:9 122:33
the promis	35:29 47:36 48:-9
day off	47:9 53:39 108:-11 110:28 112:-9
from job	0:-9 47:13 70:-10 72:59 75:-10 125:26
date is	47:25
@job any	38:19 77:14 84:13 87:9 125:-9
for no	38:10 47:8
cancel==	11:-8 13:-17 16:-10 17:-8 26:28 29:-9 31:-13 33:-15 38:-13 48:152 53:-10 101:-10 105:-13 106:157 112:9 113:-11 114:-8 117:-25 118:-11 119:118 124:47 125:37
cancel	1:-13 9:-8 11:-8 13:-19 16:-15 17:-9 26:28 29:-9 31:-13 33:-16 38:-15 43:-8 48:148 53:-10 64:-8 65:-9 84:-8 101:-10 105:-13 106:157 107:-8 112:9 113:-13 114:-9 117:-25 118:-12 119:118 124:47 125:97
^ cancel	13:-14 26:-19 31:-12 48:146 106:106 117:-21 118:-9 119:141 124:37 125:-30
cancel job	48:87 106:-10
@job why	77:8
#n why	77:17
cancel the	26:43 48:45 53:-8 106:29 112:12 117:-9 119:45 125:-24
@job becaus	48:14 77:8 108:16
cancel @job	48:35 106:-8
is call	48:13 61:49 99:30 103:-9 110:-9 120:9 121:11
call off	17:-11 48:102 108:-18 119:51
cancell==ed	13:-12 31:-11 43:-8 47:-9 48:93 65:-15 87:-11 106:16 112:8 113:-23 114:-15 117:-15 118:-19 119:99 125:57
cancell	13:-12 31:-11 43:-8 47:-9 48:93 65:-15 87:-11 106:16 112:8 113:-23 114:-15 117:-15 118:-19 119:99 125:57
is cancell	13:-9 48:124 113:-12 119:33 125:-10
cancell $	13:-8 31:-8 48:104 65:-10 106:16 113:-12 117:-8 118:-8 119:48 125:-10
^ call	17:-11 48:88 55:-9 98:11 99:70 103:-12 108:34
off @job	48:19
off job	48:21 65:-8 87:18 108:38
defin==e	16:-8 32:-12 49:74 85:60 86:-15 88:-11 98:88 99:-12 120:86 121:-21 122:-20
thickness==	39:-9 88:28
name==	7:16 17:12 25:-12 26:39 49:-17 58:32 61:40 81:-9 85:36 86:27 98:23 106:8 120:20 125:-8
material==	5:27 49:76 83:9 84:18 98:-28 120:-38
height==	17:26 49:15 50:11 88:30
defin	16:-8 32:-12 49:74 85:60 86:-15 88:-11 98:88 99:-12 120:86 121:-21 122:-20
^ defin	16:-8 32:-12 49:63 85:60 86:-15 98:81 99:-10 120:86 121:-21 122:-20
defin wire	49:66 120:-8
thickness	39:-9 88:28
tang thickness	39:-8 88:30
name	7:16 14:38 17:11 25:-13 26:38 49:-17 58:29 61:40 81:-9 85:36 86:27 98:23 106:8 120:20 125:-9
in name	85:8 120:13
name ~	49:-15 56:-16 61:12 81:-8 85:15 86:19 98:15
~ name	49:24 56:9 86:12 98:15 120:-36
material	5:25 11:-9 13:-10 23:48 49:76 83:26 84:14 98:-28 120:-38
~ material	49:50 98:-22 120:-28
material ~	49:66 98:-28 120:-38
~ crown	49:31 98:-16 120:-16
height	17:26 19:12 49:15 50:10 88:25
crown height	19:12 49:15 50:10 88:25
mm material	49:9
crown width	39:-9 49:25 88:58 98:-10 120:-13
width #n	74:10 85:25
height #d	49:15 88:16
mm name	49:9 85:17 98:-25
barb	88:91
wire ~	49:90 58:-9 98:-11 120:-9
tang depth	49:10 98:-12
#d name	85:16 98:-16
name $	14:39 25:-8 26:22 61:14
defin a	49:8 85:10 120:15
wire call	49:54 125:13
call ~	49:41 58:24 61:42 98:27 110:-10 120:12
a wire	49:53
deep==	4:-14 13:-8 16:-14 18:91 41:-11 49:13 74:81 80:-9 88:39 91:24 93:-8
thick==	18:9 49:8 80:-8 88:37
#d high	49:9 88:20
high crown	16:-13 49:14
mm wide	16:-10 18:19 49:36 74:17 76:17 85:8 88:25
wide crown	16:-53 49:57
crown #n	49:22 88:10 90:9
wide #d	16:-9 49:10
deep	4:-14 13:-8 16:-14 18:91 41:-11 49:13 74:81 80:-9 88:39 91:24 93:-8
mm high	3:-10 8:45 16:-19 49:20 51:-8 88:14
mm deep	4:-8 18:14 74:34 88:14
thick	18:9 49:8 80:-8 88:37
#d thick	49:8 80:-8 88:20
high #d	16:-13 49:13
#d deep	16:-9 49:11 74:43 80:-9 88:14
~ #d	46:-9 85:13
tang #n	39:10 78:10
add kind	49:17
kind of	24:13 49:32 80:-8 100:13
receiv==e	50:28 125:18
form==	8:10 66:-8 116:13
mass==	39:-14 49:-9 67:22 68:8 116:12 120:22
receiv	5:-9 19:20 20:18 23:-9 31:-15 33:13 39:-11 50:107 66:-15 67:-12 104:23 116:-19 117:72 119:-11 125:23
^ receiv	31:-13 39:-10 50:98 66:-9 67:-11 116:-12 117:61 119:-9
form	8:10 66:-8 116:13
coil	3:-9 8:16 9:-13 20:-9 31:-10 39:-11 48:-11 50:84 66:-17 67:54 68:-11 70:-18 71:115 79:-18 88:-8 101:9 116:58 120:10 121:15 125:43
)~",
R"~(#n count	36:14 41:-9 45:-10 47:-19 72:45 82:13 116:8
#c count	50:9 79:11
mass	39:-14 49:-9 67:22 68:8 116:12 120:22
@wire mass	39:-9 67:16 79:-8
mass #c	39:-12 49:-9 67:20 68:8 79:-13 116:13 120:22
g	1:-9 8:-8 20:-12 39:-25 50:28 51:-17 66:-35 67:136 68:123 69:-10 79:-14 120:26
#c g	39:-14 50:35 66:-11 67:87 68:19 79:-12 116:8 120:27
tare==	50:15 68:-9 120:29 121:-8
division==	55:18 68:11
tare	50:15 68:-9 120:29 121:-8
tare #c	50:19 68:-9
gram	1:-10 39:-16 51:-9 66:-20 67:97 68:112 79:-12 116:9 120:19 121:14
#c gram	39:-8 50:16 66:-17 67:97 68:27 79:-9 116:12 120:20 121:14
gram wire	68:9
division #c	68:11
#n each	116:13
g wire	67:12 79:-9
receiv==ed	5:-9 19:21 20:18 23:-9 31:-14 33:13 50:79 66:-9 67:-12 104:23 116:-16 117:72 119:-11
receiv #c	50:21
#c coil	50:21 67:-10 120:17
coil of	31:-9 39:-10 50:118 66:-11 68:-17 79:-14 116:54 117:-12 125:38
receiv #n	50:11 125:17
#n coil	50:17 116:20 117:12 121:8
#n stick	1:-8 17:24 31:30 32:9 38:-9 39:-24 50:60 51:-9 66:82 67:-16 68:-10 88:-8 116:35 117:33 118:-19 119:-11 120:63 121:10 125:36
#d each	66:8
each from	50:10
#c stick	66:51 67:-19 117:20 121:24
got #c	99:16
~ from	50:10 116:41 120:21 121:-19 122:-22
high from	17:-8 89:17
each for	7:9
#d from	76:21 80:13
dollar	50:9
#n dollar	50:9
$	50:21
$ #n	50:21
#n #d	36:-19 39:-18 40:-18 70:-26 81:83 82:86 92:18 125:10
yesterday #n	39:9 50:29 117:-10
unpack==ed	50:14
unpack	50:14
^ unpack	50:14
#c from	59:-22 60:51 111:16
#c for	59:17
yesterday for	71:18 72:20 75:-10
#c #d	82:31
#c @wire	50:10 116:13
stick for	5:10 50:19
#d #n	38:14
#n @wire	1:26 22:-12 50:111 51:-8 66:-18 79:59 81:-12 116:16 117:-12 125:-8
each @day	52:28 54:-11
bought==	50:63 66:-8 116:-12 125:11
bought	50:63 66:-8 116:-12 125:11
^ bought	50:63 66:-8 116:-12
bought #n	50:27 116:-9
stick from	117:8
#c the	79:16
#t for	105:8
&#c#d#n@day@wire	81:9 82:-9
stick $	31:-17 32:11 49:14 66:42 67:16 71:18 116:36 118:-12 119:-8 120:8 121:30
have come	19:10 45:18 50:33
^ #c	31:-8 39:-8 60:19 66:-8 67:13 68:55 79:17 82:14 117:32
@wire came	8:-10 20:23 21:-14 50:52 67:-27 117:18
came $	50:23 117:74
came in	8:-9 20:24 21:-14
stick came	117:30
^ delivery	19:31 50:32 66:-20 117:30
brought==	43:23 46:10 50:38 66:-17 85:-8 117:18
^ ~	50:21 116:-8 117:54 118:68 120:-10 121:42
brought	43:23 46:10 50:38 66:-17 85:-8 117:18
~ brought	117:19
us #n	104:22 116:13 117:14
brought #n	50:33 66:-17
~ deliver	50:13 117:29 118:34 120:-11 121:19
sent==	5:15 31:28 50:25 57:21 117:13
sent	5:15 31:28 50:25 57:21 117:13
~ sent	117:8
sent us	117:8
deliver #n	117:33
morn for	105:14
deliver us	117:21
sent #n	50:25
^ ther	0:-15 8:-27 22:-11 25:-14 35:-9 47:-9 58:12 66:46 69:12 79:8 82:12 85:11 87:25 89:24 90:51 91:27 93:8 99:91 100:26 113:24 120:13 125:38
ther arriv	50:13 66:-9
arriv #n	117:11
rack==	8:38 9:-8 39:33 66:14 67:-11 79:12
#n more	29:-14 30:68 39:8 50:66 85:12
more stick	50:23
rack	8:38 9:-8 39:33 66:14 67:-11 79:12
the rack	8:21 39:33 66:14 67:-11 79:12
rack $	39:25
shelf==	8:58 57:24 66:32 125:-13
took #c	82:30
shelf	8:58 57:24 66:32 125:-13
shelf $	8:58 66:32
the stock	66:14
without==	5:18 8:-13 9:-9 22:20 50:8 52:26 65:21 79:18 89:-8 119:15
without	5:18 8:-13 9:-9 22:20 50:8 52:26 65:21 79:18 89:-8 119:15
without an	50:13
arriv without	50:10
not order	50:30 116:-12 117:-9 119:-14 122:31 125:11
@wire that	31:-18 50:27 82:9 117:23
that was	38:13 83:-10 84:23 117:30 123:15
a stick	39:14 50:-10 67:-10 68:28
a coil	50:39 67:-18 79:-8 116:20
receiv coil	50:8
bought a	50:12 125:14
mm from	55:36 70:-9 82:9
coil==	8:17 9:-11 48:-11 50:39 67:63 70:-18 71:90 79:-13 101:10 116:31 125:45
mm coil	50:12
receiv #d	50:13
bought #d	50:12
a #c	5:65 50:-8 85:9
g coil	116:8
@wire yesterday	66:8
gram of	67:17 68:-8
g of	66:-14 67:34
g $	51:-12 66:-12 67:56 68:71 121:11
weigh==ing	50:31 67:-33 68:16 125:42
weigh	1:-10 39:-10 50:-9 66:-8 67:92 68:79 116:-8 125:58
@wire weigh	50:9 68:52
weigh #c	50:13 67:10 68:30
empty==	1:-8 2:9 4:-8 13:52 50:26 68:-12 77:19
empty	1:-8 2:9 4:-8 13:52 50:26 68:-12 77:19
empty #c	67:11
spool==	50:41 61:10 67:41 68:-25
spool	50:41 61:10 67:41 68:-25
gram tare	50:11
gram $	39:-8 67:26 68:75 120:14 121:11
^ coil	67:24
arriv weigh	50:11 67:-10
reorder==	1:-8 8:-19 9:88 17:-23 19:-10 51:132 66:-8 88:-11 125:23
reorder	1:-8 8:-19 9:88 17:-23 19:-10 51:132 66:-8 88:-11 125:23
^ reorder	9:-30 17:-10 51:106
reorder level	8:-17 9:35 17:-23 51:82 125:30
level wire	9:-23 51:32
below==	41:-25 51:83 78:-9 89:31 90:22 92:121 93:-8 120:8 125:-23
reorder @wire	9:19 51:15
below	41:-25 51:83 78:-9 89:31 90:22 92:121 93:-8 120:8 125:-23
@wire below	51:8
below #n	51:26 89:19 92:16
@wire under	9:-10 31:37
under #d	51:33
below #d	41:-10 51:20 92:15
^ tell	8:15 9:13 13:42 17:-10 23:15 24:-10 35:14 51:18 56:44 125:32
tell me	1:10 6:11 8:17 9:12 13:37 14:14 23:14 24:-10 25:9 51:18 114:-9 125:35
me when	28:12 51:24
when the	16:11 28:10 47:15 48:-9 51:11
is under	51:25 91:19
^ say	51:15
say when	51:15
when @wire	51:28
is below	51:35 125:-19
under #n	51:37 89:16 90:60 125:17
^ @wire	0:-12 1:-19 5:63 7:9 8:63 9:26 18:37 19:30 20:44 21:-17 22:-8 24:37 29:-9 31:-13 32:-21 33:30 38:-10 39:-27 40:-11 46:-8 49:-16 50:-28 51:25 66:25 67:47 68:-23 69:36 80:-16 81:-11 88:38 92:-15 117:16 118:42 119:12 125:-23
low under	51:14
low below	51:20 92:-8
low at	51:28 92:8
the reorder	8:-15 9:30 125:33
^ open	12:-11 13:46 28:18 29:-8 31:25 52:65 53:-17 54:75 109:-15 111:-14 112:80 125:-11
hour day	28:-18 52:18
open @day	52:28 53:9 54:13 112:29 125:-9
@day from	52:44 54:-27 109:20
@day #r	16:-13 52:15 105:69 109:38 110:-17
@day #n	52:23 54:13 105:23 109:18 111:-19
open every	52:13 54:-11
every @day	52:52 54:-25 109:14
from from	109:27 111:-11
alway==s	52:81 53:-27 54:-10 86:15 101:-9 104:9 109:10 122:12
alway	52:81 53:-27 54:-10 86:15 101:-9 104:9 109:10 122:12
open alway	52:9 54:-9
alway on	52:28 53:-11 54:-9
on every	52:8 109:12
@day are	28:-18 52:50 54:-13 109:9
are #r	28:-27 54:25 109:12
are from	52:13 54:21
of each	5:8 8:12 9:9 52:10
for every	0:-8 7:19
are #n	0:12 4:-11 52:-8 54:11 66:26 74:23 80:21 82:-8 98:15 99:22 121:16
^ on	0:-18 1:75 3:-9 4:-10 11:-16 13:-11 16:-9 17:-15 18:-8 24:-9 26:11 27:9 31:21 41:-13 42:20 43:-17 45:21 52:14 54:13 67:9 69:16 74:19 75:19 89:-8 92:14 93:21 101:11 107:95 108:-16 109:11 110:-8 113:-9 114:-9 116:21 117:-13 125:-14
@day we	50:14 53:10 54:29
open from	52:19 54:18
^ every	40:-9 52:11 54:-11 81:34
@day open	52:27 54:-15
clos every	52:26
are shut	52:16 53:28 112:21
^ clos	52:11 53:164 110:-10 112:-17
clos alway	52:17 53:-10
clos day	53:15 112:26
begin==s	52:-16 54:-19 87:27 111:51
@day week	47:20 52:-17 54:35 116:8 118:35
begin at	46:-8 87:10 105:11 111:12
^ shut	28:-15 52:-9 53:112
shut the	53:16
shop for	84:11
shut on	28:27 52:33 53:8 111:-9 112:17
clos the	53:27
shop on	54:12 112:15
#r becaus	53:12 101:9
tomorrow becaus	53:13
@day becaus	53:13
shop is	28:-19 53:26 55:27 109:29 112:22 125:-8
is shut	53:38 112:-9
december becaus	110:9
is clos	53:11
today becaus	53:12 110:12
through @day	28:14 53:13 110:18
clos next	53:13 112:22 125:-18
@day through	28:20 53:12
shop @day	53:13
morn becaus	101:11
clos #r	112:12
even becaus	110:12
clos #o	112:12
clos this	53:23
early==	53:10 110:-12 111:53
early	53:10 110:-12 111:53
early on	111:17
&#n#o@day	45:-9 54:11 115:28
clos @day	52:43 53:-12 112:16 125:-13
december from	105:19
from at	32:9 53:17
#t on	101:27 109:-14 111:18
tomorrow from	109:-9 111:28
yesterday becaus	40:14
close==s	53:17
close	53:17
shop close	53:17
from yesterday	111:9
clos at	52:8 53:13 112:-10
week becaus	101:8 110:10 125:-8
clos all	53:9
we will	49:11 53:19 54:15 86:14 99:-15 105:9 112:21 115:20 119:18 125:24
will not	9:-9 38:25 48:14 50:-15 53:17 86:13 93:24 103:9 108:14 110:45 111:-11 117:19 119:55 125:-73
not open	53:127 54:-8 112:-42 125:-35
open #r	53:9 54:12
after==	0:46 2:-12 4:-9 5:-10 6:25 10:-11 11:-34 16:-21 17:-14 22:8 23:-10 24:24 28:-23 29:-10 30:-9 33:-16 36:-11 42:-16 43:-18 44:-24 47:-11 48:10 50:41 52:-8 53:14 54:-17 55:63 62:8 64:-11 83:-8 87:15 89:-14 90:-8 91:-10 93:59 95:-11 97:-8 105:13 107:-16 108:-13 109:-15 110:-13 111:63 112:77 113:-13 114:159 115:31 117:-11 120:-12 121:10 125:30
)~",
R"~(after	0:46 2:-12 4:-9 5:-10 6:25 10:-11 11:-34 16:-21 17:-14 22:8 23:-10 24:24 28:-23 29:-10 30:-9 33:-16 36:-11 42:-16 43:-18 44:-24 47:-11 48:10 50:41 52:-8 53:14 54:-17 55:63 62:8 64:-11 83:-8 87:15 89:-14 90:-8 91:-10 93:59 95:-11 97:-8 105:13 107:-16 108:-13 109:-15 110:-13 111:63 112:77 113:-13 114:159 115:31 117:-11 120:-12 121:10 125:30
after all	28:-19 42:-10 48:18 50:43 54:-8 65:11 87:19 109:-14 110:-11 111:73 112:85 114:-10 117:-8 125:13
@day after	109:-12 110:-8 111:50 112:32 115:19 125:-28
all $	3:-9 5:-8 9:17 11:-18 12:-20 13:18 14:13 16:10 17:20 19:24 23:-10 24:-32 25:-8 26:10 28:10 29:50 43:-15 45:-23 47:13 50:33 54:-8 66:25 69:-8 78:-11 84:-10 101:-10 109:-14 110:-12 111:67 112:74 117:16 125:63
no work	28:-9 53:86 101:-13
work today	25:23 53:8
work tomorrow	14:-19 28:44 110:13 111:16 125:-8
^ tomorrow	53:24 112:9
tomorrow is	53:13 112:13
a clos	53:11 87:10 112:14
holiday==	53:57 83:15 110:14 111:-10
^ #o	29:-9 45:30 53:24 89:-8 92:9 114:13
december is	53:14 112:42
holiday	29:-8 53:55 83:15 110:33 111:-11
a holiday	53:15
holiday $	53:33 110:18
a day	53:41 108:54 112:-9 113:10 125:-11
^ @day	52:80 75:-8 109:-24 110:-12 111:19 112:56 118:-9
@day is	53:15 101:10 110:-8 112:19
^ today	28:-15 29:70 54:13 62:33 111:19
extra==	52:-18 54:98 111:-10
extra	52:-18 54:98 111:-10
open extra	54:36
until #n	45:11 52:17 54:11 71:10 81:11 89:9 105:10 109:11 111:-14 115:9 118:12
hour #r	101:-8 111:9
until this	54:18
@day hour	52:19
~ hour	11:-15 55:33
hour #n	111:11
tomorrow only	111:23
extra day	54:11
#t day	111:8
open longer	54:10
longer on	54:10
until yesterday	54:8
open late	54:28
late on	111:8
&#t@day	52:51 54:37 101:19 105:-10 109:-25 111:-10
open today	28:19 54:9
extra on	54:13
december #r	54:18
also==	1:10 2:28 14:8 52:-28 54:49 116:22 117:-8 120:12
also	1:10 2:28 14:8 52:-28 54:49 116:22 117:-8 120:12
are also	54:9
also open	52:-28 54:49
^ also	1:11 52:-25 54:36
beside==s	28:27 54:14 67:30 68:-15
beside	28:27 54:14 67:30 68:-15
open beside	54:14
beside on	54:8
#o #n	36:12 44:8 45:32 65:12
^ extra	54:46
extra open	54:25
open only	52:-15 54:23
only on	1:105 3:9 4:-8 52:-8 54:9 107:-11 109:9 118:15
december #n	30:20 112:13
only from	5:11 54:13 111:34
open the	13:52 28:33 53:9
only #n	1:-21 2:15 3:24 4:90 16:-11 39:14 44:-8 54:-9 69:17 75:-8 85:12 89:-11 99:23 111:-8 117:10 118:-8
december open	54:15
december we	53:-9 112:13
open #n	52:17
today open	54:19
open tomorrow	112:29
#n only	1:75 2:17 17:-9 43:-8 52:-8 54:11 114:30
today are	28:-12 54:25
december are	54:15
set==ting	55:56 99:46 104:-13
gap	3:28 42:-9 82:-10 87:-11 89:52 90:209 91:19 93:-8 95:-8 114:-8
to ~	55:57 56:25 57:-8 61:15 64:14 99:17
zone	55:67
press_end_clear	55:10
recheck may	55:8
may be	2:9 43:23 55:8 84:10 102:23 110:-12 125:48
after press	11:-15 45:17 55:34
recheck can	55:15
can be	43:20 55:11 65:-8 101:-8 102:11 106:57 113:-8 119:9
hour after	55:16
h==	11:-16 55:28
h	11:-16 55:28
~ h	11:-16 55:28
h on	55:9
within==	3:18 41:-9 55:11
within	3:18 41:-9 55:11
due within	11:-10 55:12
within ~	11:-10 55:12
h after	11:-10 55:11
due after	11:-10 55:37
after ~	11:-8 55:11
h $	55:8
zone==	55:63
the zone	55:10
zone is	55:44
is ~	55:82
timezon==e	55:15
timezon	55:15
timezon is	55:15
^ zone	55:13
our zone	55:20
^ time	22:19 27:25
time zone	55:20
currency	55:55
zone to	55:10
flat_end	55:9
the set	55:41 99:22
gap is	3:10
plat==e	12:30 16:-16 25:-8 26:-9 29:-14 44:-23 55:93 99:-8 101:-17 105:19 125:10
read==s	50:14 55:35
plat	12:30 16:-16 25:-8 26:-9 29:-14 44:-23 55:93 99:-8 101:-17 105:19 125:10
the plat	55:20
plat of	55:24
press read	55:13
read ~	55:17
press plat	16:-13 44:-21 55:60 101:-8 125:12
^ plat	55:13
plat is	55:9
press say	55:15
receiver==	35:11 49:-8 56:90 57:200 58:-10 122:-12 125:-19
url==	49:-9 56:36 58:-25
shap==e	56:23 58:-10
receiver	35:9 49:-8 56:97 57:241 58:-12 98:-8 100:-19 122:-15 125:-20
add receiver	56:59 57:-24
url	49:-9 56:36 58:-25
url ~	49:-9 56:35 58:-25
shap	56:23 58:-10
~ shap	56:10
text	56:17
~ want	56:15 58:-10
press.du	56:8
want press.du	56:8
~ url	49:-9 56:28 58:-19
cloudevent	56:10
shap cloudevent	56:9
event	56:9
shap event	56:8
receiver ~	56:35 57:41
a receiver	35:16 56:28
tell ~	55:-9 56:41 57:67 108:-11
send==	4:27 11:8 26:23 55:-8 56:33 116:15
reminder==s	14:-9 32:-10 33:-10 56:30 57:12 125:51
send	4:27 26:22 55:-9 56:33 57:32 108:-8 116:15
^ send	56:31
reminder	14:-9 32:-10 33:-10 56:30 57:12 125:51
send reminder	56:30 57:13
reminder to	56:30 57:13
drop receiver	57:14
drop the	38:23 47:23 57:13 60:12 86:11 100:12 117:9 125:28
the receiver	57:71
remov receiver	57:28
tell==ing	57:70 108:-12 113:21
^ stop	38:44 57:100 108:58 125:-8
stop tell	57:70 108:-11
role==	14:14 49:-22 56:-21 58:79 61:46 64:-14 125:16
uid==	38:-8 58:43 59:164 60:166 64:-14 65:-23 111:-12 125:-12
new person	58:78
role	14:49 49:-22 56:-21 58:76 61:46 64:-14 125:16
~ role	49:-15 56:-14 58:41
role look	58:10
uid	38:-8 58:43 59:164 60:166 64:-14 65:-23 111:-12 125:-12
uid #n	59:103 60:92 64:-13 65:-20 111:-11
role bench	61:16
bench role	58:25 61:9 125:18
role lead	49:-15 56:-14 58:34
person ~	58:52
uid #c	58:43 59:27 60:57
#c bench	99:13
lead name	58:14
lead role	58:9 61:8
#c name	49:-11 56:-8 98:16
look $	4:-10 13:53 58:53 61:30
lead $	58:44 61:35
add person	58:35
person call	58:33
with role	14:35
a person	58:47 62:-16 63:28 65:22
welcom==e	58:93
as==	0:-11 1:-24 2:13 3:-9 5:21 9:-24 10:12 11:-10 13:-18 15:-10 16:-20 17:18 20:-8 23:-10 25:-8 27:-16 29:-9 31:33 33:-15 36:-9 38:-12 39:-9 40:-8 42:32 43:47 47:-9 48:-13 50:21 51:44 52:-19 53:-16 54:-8 55:12 56:8 57:-9 58:59 59:43 60:-22 61:-10 65:-11 66:-11 69:-10 72:-8 73:9 75:-8 79:-12 82:-11 83:8 84:-9 87:-11 89:-13 91:-10 93:14 94:-9 95:35 98:55 99:38 100:20 101:-9 102:12 103:-17 104:27 106:-11 107:23 108:-18 109:-8 110:-14 111:45 112:24 113:44 114:-12 116:-8 118:-9 121:17
welcom	58:93
^ welcom	58:93
welcom ~	58:93
as	0:-11 1:-24 2:13 3:-9 5:21 9:-24 10:12 11:-10 13:-18 15:-10 16:-20 17:18 20:-8 23:-10 25:-8 27:-16 29:-9 31:33 33:-15 36:-9 38:-12 39:-9 40:-8 42:32 43:47 47:-9 48:-13 50:21 51:44 52:-19 53:-16 54:-8 55:12 56:8 57:-9 58:59 59:43 60:-22 61:-10 65:-11 66:-11 69:-10 72:-8 73:9 75:-8 79:-12 82:-11 83:8 84:-9 87:-11 89:-13 91:-10 93:14 94:-9 95:35 98:55 99:38 100:20 101:-9 102:12 103:-17 104:27 106:-11 107:23 108:-18 109:-8 110:-14 111:45 112:24 113:44 114:-12 116:-8 118:-9 121:17
~ as	58:27
as look	58:14
as lead	58:8
lead at	121:8
map==	59:62 60:-13
map	59:62 60:-13
^ map	59:62 60:-13
map uid	59:62 60:-13
@person uid	59:9 60:-9
#n uid	59:16 60:-16
&#c#n@person	111:17
^ uid	59:29 60:59 65:-20
#c is	59:45 60:20 73:16 101:25 102:-12
to @person	15:10 28:-9 29:9 59:36 60:-8 63:-11 64:74 125:18
has uid	59:18 60:-8
is uid	59:31
in as	59:33 98:10 111:-9
as uid	59:30 60:-8 111:-8
unmap==	59:-9 60:95
unmap	59:-9 60:95
^ unmap	59:-9 60:95
unmap uid	59:-8 60:61
uid $	59:26 60:22
is nobody	59:-10 60:57 65:57 113:-10
nobody $	59:-9 60:48 65:65 66:-10 69:18 113:-10
take uid	59:-22 60:68
#c away	60:21
forget==	16:-13 34:-28 44:11 59:-8 60:37 84:14 86:23 112:16 122:23 123:82 124:8 125:-19
forget	16:-13 34:-28 44:11 59:-8 60:37 84:14 86:23 112:16 122:23 123:82 124:8 125:-19
^ forget	34:-28 60:24 84:14 86:14 104:8 122:26 123:82 125:-13
forget uid	60:25
chang person	61:46
person person	63:9
@person name	106:11
@person role	61:16
make @person	61:65 110:16
@person a	29:14 61:37
a bench	58:-10 61:12 65:27 103:74 105:17 125:-16
@person lead	61:29
look now	61:21
a lead	58:35 61:25
lead now	61:26
is lead	61:13
renam==e	9:-10 25:-11 32:-13 55:-9 61:56 63:-9 99:79 101:-8 121:36
renam	9:-10 25:-11 32:-13 55:-9 61:56 63:-9 99:79 101:-8 121:36
^ renam	9:-10 25:-11 32:-13 55:-9 61:56 63:-9 99:79 101:-8 121:36
renam @person	61:57 63:-9
@person to	61:65 63:27 64:-8
~ now	120:52 122:-9
retir==e	14:-17 61:-8 62:118 63:10 86:8 117:-8 121:9
^ retir	14:-16 62:115 63:-18
retir person	14:-16 62:56
has left	14:29 62:16
for good	62:29 86:22 93:11 100:22
@person left	62:58 63:-22
left us	62:25
us for	61:12
is gone	62:41 63:-14 77:42 86:19
gone $	57:26 62:34 77:32 122:21
)~",
R"~(@person doe	15:-8 28:-14 30:12 61:-8 62:29 63:-10 64:65 109:39
doe not	0:-11 16:-8 28:-13 42:19 48:9 62:38 64:-8 65:-14 73:-31 89:69 100:11 101:25 104:16 106:16 109:18 110:9 111:-14 114:22 125:-8
not work	28:-15 53:-9 62:37 101:25 109:42 110:38 111:-16 125:-22
here any	62:46 100:32 109:-16
retir @person	62:32 63:45
return==	42:8 61:-13 63:81
return	61:-15 62:-17 63:109 65:32 125:-11
^ return	61:-13 63:81
return person	63:54
is back	25:-24 63:43 101:21 102:78 125:-10
here again	62:-9 63:45
has come	5:10 31:-8 62:-11 63:45 117:53
come back	25:32 62:-11 63:45
give job	64:32 113:27 115:14 125:23
@job bench	64:9
#n bench	99:87
give the	64:14 104:18 115:18 120:20
give @job	64:19
to bench	64:13
to me	1:-8 12:15 13:-15 19:8 35:20 39:12 64:38 89:30 125:-10
@job goe	64:12 114:23
goe to	64:37
is mine	64:85 105:30 113:-8
@person build	64:33
build job	64:21
build @job	15:14
myself==	64:74 105:13 114:-9 125:-8
myself	64:74 105:13 114:-9 125:-8
@job myself	64:32
myself $	64:74 114:-9 125:-8
#n myself	64:42
free job	29:-12 65:75
nobody doe	15:-8 65:77
free again	38:20 65:21 84:13
from everybody	65:34
everybody $	65:65
take job	48:21 64:33 65:24 125:-8
off everybody	65:31
take @job	65:35
@job off	17:8 48:48 65:18 71:19
^ count	9:23 31:-12 39:-8 50:-38 66:132 116:-10
morn wire	66:9
note==	36:9 53:16 59:17 76:13 87:10 95:14 96:-10 97:12 105:19 108:33 110:18 121:18 125:8
stick #c	46:-10 50:-18 66:29 71:16
note	36:9 53:16 59:17 76:13 87:10 95:14 96:-10 97:12 105:19 108:33 110:18 121:18 125:8
mm stick	67:11
count==ed	8:13 9:-10 50:-26 66:88 116:-9 125:11
count #d	66:30
ther is	0:-15 5:10 8:-14 13:-8 17:-9 25:-9 50:-13 51:15 58:12 66:14 67:27 85:12 87:28 89:21 90:31 91:15 94:16 98:40 99:30 100:26 108:18 112:-9 113:20 120:11 125:36
is only	3:28 42:14 51:8 57:14 66:13 69:20 76:11 87:-9 88:11 110:-8 111:11
only #d	1:-11 8:-8 42:18 66:41 76:11 88:8
the shelf	8:59 66:33
ther are	8:-13 39:10 66:57 99:64
are #c	66:8 67:9 121:10
have only	66:25
only #c	5:-14 16:43 69:23
stocktak==e	50:-15 66:44
stocktak	50:-31 53:32 66:65
^ stocktak	50:-31 66:65
stocktak of	50:-10 66:22
stocktak the	66:15
@wire #c	50:-10 66:13 116:10
weigh==	50:-13 67:56 68:13 125:18
^ weigh	50:-14 67:79 68:-24
beside #n	67:13
weigh==s	50:-9 67:39 68:34
@wire coil	50:-23 67:59 70:-9 71:11 125:10
coil weigh	67:12
gram beside	67:12
@wire spool	67:8
spool is	50:29
g and	67:13
beside #d	67:17 68:-10
roll==	50:13 67:10
roll	50:13 67:10
@wire roll	67:8
stick weigh	67:16
g with	50:9
with its	50:11
its spool	50:13
spool of	50:16 68:-9
gram on	67:13
on its	2:-11 5:15 31:30
on a	27:42 30:-9 68:9 97:12 114:14
a spool	50:15 68:-8
g on	68:39
the spool	67:9
weigh==ed	50:-17 67:30 68:16
bare==	55:34 67:13 87:13
bare	55:34 67:13 87:13
bare $	87:8
spool $	50:-18 67:38
without a	52:26 65:22 89:-8
roll of	50:14
^ stick	1:8 67:25 71:25 73:21
the coil	8:22 9:-8 48:-11 50:-17 68:12 71:69 125:40
weigh @wire	67:13
weigh the	50:-13 67:20 68:8 125:10
g beside	67:13 68:-8
show #c	67:11
come to	10:17 19:10 41:19 50:-10 66:15 67:16 68:14 88:29
the scal	50:16 66:-8 67:54 68:12
^ scal	67:11
scal show	67:12
say #c	50:13 55:25 59:17
scal read	50:16 67:-9
laid==	2:9 11:-12 16:-16 23:53 83:19 89:61 95:-10 97:-8
laid	2:9 11:-12 16:-16 23:53 83:19 89:61 95:-10 97:-8
scal #c	46:16
laid the	16:-8 89:30 95:-9 125:21
put @wire	18:17 69:16
calibrat==e	51:-9 67:-15 68:98 104:15
calibrat	51:-9 67:-15 68:98 104:15
^ calibrat	51:-9 67:-15 68:97
@wire division	68:11
yesterday wire	81:9 82:-9
g is	68:18
gram make	68:13
gram is	68:12
calibrat @wire	51:-8 68:26
calibrat the	68:16
mm weigh	68:11
in weigh	68:8
correct==	1:-8 40:-9 69:147 125:23
correct	1:-8 40:-9 69:147 125:23
^ correct	69:110
#d by	74:32 88:11
mm by	85:18
correct the	69:31
mm becaus	69:29
in becaus	69:15
correct @wire	69:13
correct #d	69:9
correct number	69:8
from piec	70:38 71:-9 82:-8
@job out	36:13 47:15 70:12 95:10
from piece	70:16
#n up	4:28 36:-8 65:-15 70:32 71:8 82:-8 91:41 107:44
into #n	36:27 70:-12 71:-9 75:33 96:15
cut #d	74:13
@wire up	68:-8 69:16
make slot	70:31 78:28
^ made	36:-8 70:46 71:21 82:-8
made slot	36:-8 70:47 71:-11 78:15 82:-8
cut new	0:10 5:-13 71:47 75:-9 78:11
from coil	71:25
coil job	71:17
stick job	3:-10 41:-11 71:44
@job stick	71:21
#r stick	71:13
stick slot	71:11
the new	19:8 72:26 98:34 99:-9
new stick	71:30
of new	2:9 5:-15 21:13 71:42 78:-10
from new	5:-12 70:-11 78:51
the stick	5:8 39:15 70:15
of stick	5:10 39:11
off a	5:65 50:-9 71:17
coil $	8:20 48:-11 71:72
from a	71:22
off stick	71:11
cut off	57:17 71:12
cut out	71:13
#n were	5:11 24:14 27:10 33:-11 36:-15 45:-8 71:13 82:9 89:-8 95:-8 97:34 117:9 125:19
#n was	0:-9 3:-9 4:-8 16:-8 33:-11 36:11 38:8 40:11 43:-9 44:9 45:8 77:44 78:11 92:13 95:38 97:11 107:-15 108:20 125:-11
was all	73:14 117:34
was cut	69:8 71:11
@job count	47:-8 72:24
#n plac	78:10
plac ~	78:10
old==	0:-8 1:-10 2:-12 3:-41 10:-8 14:8 22:22 27:8 31:18 36:-16 40:21 41:-14 42:-21 43:39 55:8 60:9 70:-9 72:22 78:157 79:8 80:-11 91:12 92:-11 95:-8 107:-10 120:9 121:12 125:15
pull #c	72:13
old	0:-8 1:-10 2:-12 3:-41 10:-8 14:8 22:22 27:8 31:18 36:-16 40:21 41:-14 42:-21 43:39 55:8 60:9 70:-9 72:22 78:157 79:8 80:-11 91:12 92:-11 95:-8 107:-10 120:9 121:12 125:15
#c old	72:12
old fret	2:-8 43:49 70:-8 72:36 78:-14 107:-9 125:30
&#c@job@wire	72:9
fret from	73:19 75:15 125:26
#n old	0:-10 3:-21 39:12 42:-8 43:-9 72:27 78:51
@job into	72:13
from @job	72:15
pull slot	0:-13 72:54 75:-8
fret==ted	73:39
with lot	73:23
fret job	43:-12 73:22 93:45 107:18
take lot	73:29
is for	1:-13 37:35 40:14 46:-8 73:32 81:28 105:10
size==	4:-17 9:-10 32:16 74:75 88:26
size	4:-17 7:18 9:-15 32:41 74:75 88:26
slot size	4:-17 74:75
#n bottom	91:10
morn slot	71:-11 96:14
size @job	4:-14 74:36
wide and	18:34 74:10 88:8
and #d	2:15 18:17 39:20 42:-9 49:23 70:-12 72:40 80:12 81:-14 82:-16 85:-9 88:8
deep $	4:-9 41:-10 74:76 88:23 91:9
in with	44:14
a curv	74:19
curv bottom	74:17
bottom $	18:24 74:23 91:81
flat bottom	18:24
shift==ed	2:-17 41:-17 45:-11 61:13 64:-8 71:-8 75:172 89:-14
one==s	0:31 1:-12 2:22 4:-16 5:-13 9:-17 12:40 14:21 17:42 22:76 31:52 32:-12 33:-8 36:-10 40:-30 41:-24 42:-16 43:-8 44:11 45:-23 50:14 70:-9 71:-11 72:-15 75:85 81:53 82:61 89:-18 95:-14 96:13 105:-11 111:8
short one	41:-12 42:-14 45:-21 71:-27 75:98 89:-12 95:-11 125:32
one slot	75:15
one #r	41:-12 45:-10 75:43 89:-8
one fret	71:-10 75:25 95:-9
i mov	71:-8 75:67
mov fret	4:-8 75:54
^ mov	4:-9 70:-12 75:68
shift fret	75:11
and put	72:-8 75:8 95:46
#o and	4:11 11:18 20:10 32:-9 45:10 47:-8 70:12 95:11
^ board	43:55 76:66 87:18 107:-11
board width	41:-10 76:67
width job	41:-8 76:52
@job width	76:12
#n width	0:-11 76:28
wide at	46:9 76:40
at #r	45:13 92:13
at nut	76:14 87:-9
nut $	76:39
the nut	0:9 2:11 4:33 13:-9 36:13 46:20 76:33 85:-9 87:32
^ width	76:35
width of	39:-9 41:-12 76:41 88:34
the width	76:16 85:10
board is	29:-10 30:8 76:11 87:34 103:28
lost==	17:-9 33:45 41:-11 75:-14 77:153 91:-11 93:-8 125:-9
lost	17:-9 33:45 41:-11 75:-14 77:153 91:-11 93:-8 125:-9
^ lost	77:106
lost job	77:17
spoilt==	0:-8 77:90 86:14
spoilt	0:-8 77:90 86:14
^ spoilt	77:28
lost slot	77:10
ruin==ed	77:108 81:20 89:-9 91:14 125:-9
ruin	77:108 81:20 89:-9 91:14 125:-9
^ ruin	77:61 91:-8 125:-8
spoilt slot	77:21
spoil==ed	77:69
spoil	77:69
is spoil	77:29
spoil $	77:34
lost $	33:49 41:-8 77:49
got lost	77:9
is lost	77:24
been lost	33:51 77:-23
got spoilt	77:16
spoilt $	77:16
damag==ed	77:39
damag	77:39
was damag	77:39
is ruin	77:22
ruin $	77:28
i drop	39:18
and we	121:16
can not	8:9 23:16 24:8 65:22 77:55 81:12 91:37 101:65 110:27 122:9 125:-59
not find	77:60 91:45 125:-15
find it	77:21
lost fret	77:43
#n we	47:15 54:-8 106:10 115:19
and i	14:11 16:-12 32:11 44:12 50:-8 66:10 77:9 78:9 79:10 83:14 97:20
#n i	0:32 45:27 70:16 72:18 75:-15 82:16 89:-21 90:-8 105:12 125:27
@job we	114:11
#n can	35:17 48:8 72:10 78:-8 98:10 102:16 106:16 113:13
fell==	77:47 111:17
fell	77:47 111:17
#n fell	77:31
fell down	77:17
down and	77:9
and is	40:16 61:8 62:12 63:-11 77:22 124:30
down is	77:8
floor==	77:19 101:11
floor	77:19 101:11
the floor	77:19 101:11
)~",
R"~(flew==	77:26
somewher==e	77:48
flew	77:26
flew off	77:18
somewher	77:48
off somewher	77:18
somewher $	77:48
vanish==ed	77:44
vanish	77:44
has vanish	77:37
vanish $	77:23
vanish somewher	77:21
#o has	77:20
i bent	77:12
bent fret	77:12
ruin fret	77:28 91:24
brok==e	1:-8 17:-10 39:-14 101:57 108:54 118:8 125:23
brok	1:-8 17:-10 39:-14 101:57 108:54 118:8 125:23
^ brok	17:-10 108:56 125:-8
find fret	77:31
remad==e	0:-10 3:-16 36:-8 41:-14 42:-10 78:186 91:-13
remad	0:-10 3:-16 36:-8 41:-14 42:-10 78:186 91:-13
^ remad	0:-8 3:-13 41:-8 78:133 91:-9
remad length	78:12
old length	3:-18 78:45
@job old	3:-15 43:46 72:-31 78:39
old tin	3:-10 78:18 79:9
tin slot	3:-8 78:18
old scrap	3:-10 78:27
#n tang	78:10
length $	4:49 7:16 22:40 121:8 125:-11
remad fret	78:22
remad slot	78:47
make fret	36:33 70:-23 78:26
@job over	3:-9 64:9 78:21
over at	78:26
#n over	16:22 75:10 78:22
i made	33:10 43:10 45:15 65:16 70:-28 75:-9 78:18 82:42 97:9
made new	78:12
new fret	0:-11 2:11 41:-11 71:-19 72:25 78:71
cut a	1:17 71:-14 74:10 78:23 104:11
made a	65:16
and old	91:12
old one	0:12 27:10 78:19
the old	0:10 2:-8 27:9 31:19 55:9 78:26 79:8 80:-8 107:-8 121:13 125:28
one is	78:8
the scrap	21:10 81:33
goe the	86:15 101:-8
is remad	78:33
remad at	78:27
was remad	78:18
remad $	78:47
handful==	8:-19 22:-14 39:-30 41:-26 50:-14 66:-11 69:-9 79:173 80:204 81:-11 82:-10 88:-13 116:-8 125:48
handful	8:-19 22:-14 39:-30 41:-26 50:-14 66:-11 69:-9 79:173 80:204 81:-11 82:-10 88:-13 116:-8 125:48
^ handful	79:59 80:52
~ count	85:-9 98:25 120:-9
chuck another	79:9
another handful	79:29
handful of	8:-13 39:-20 50:-11 66:-9 79:79 80:62 81:-8 88:-11 125:53
threw another	79:8
handful piece	79:14
threw a	39:9
a handful	39:-11 50:-8 79:69 80:23 125:13
chuck a	79:19
@wire the	51:22
of short	0:25 79:24
short in	79:29
i chuck	79:11 81:33 82:-26
handful short	79:18
the handful	41:-8 79:20 80:69 81:-9 125:22
handful $	79:49 80:25
chuck==	1:-9 38:-10 40:87 81:-9
bit==s	2:11 7:15 9:-18 16:-8 18:-8 20:-11 21:9 22:100 23:20 33:-9 79:44 83:16 125:-11
bit	0:76 1:10 2:8 7:13 8:18 9:-12 13:-15 16:-10 18:-13 19:-8 20:-20 22:88 23:17 35:9 36:-16 39:-22 42:-11 50:-8 66:-9 74:8 79:40 83:15 89:41 92:9
@wire short	79:38
toss==ed	40:24
toss	39:17 40:24
^ toss	39:17
i toss	40:24
toss a	39:18
short into	79:11
chuck #n	79:30 81:33 82:-26
@wire bit	7:16 22:13 79:12 81:12
measur handful	41:-11 80:35
one_raw length	46:-9 80:9
handful #d	41:-12 80:17
measur that	80:12
that handful	80:13
handful is	80:22
handful has	80:14
was #d	80:9 92:10
mm out	82:12
several==	35:14 81:37 82:48
several	35:14 81:37 82:48
scrap several	81:45 82:-13
mm piece	81:9
scrap #c	81:11
mm one	81:20 82:45
one $	0:-9 2:25 5:-11 9:-8 14:19 17:12 22:58 40:-14 81:38 124:14 125:25
s==	36:-11 39:-10 40:-20 41:-10 70:-17 81:71 82:106 125:55
the #c	81:9
s	36:-11 39:-10 40:-20 41:-10 70:-17 81:71 82:106 125:55
#d s	40:-12 41:-8 70:-14 81:43 82:49 125:59
&#c#d	49:20 53:34 82:19
s $	40:-13 81:57 82:-18
mm s	81:33 82:31
s of	39:-9 81:21 82:36
in s	82:26
s becaus	81:11
bin==ned	40:26 81:9
bin #c	81:10
one becaus	40:-15 81:19
in one	40:-8 81:18
out all	81:19
scrap all	81:23
bin all	81:13
@wire bin	81:17
them $	2:8 8:-8 10:-8 16:53 19:8 22:25 30:8 41:-11 43:8 50:-10 66:8 74:8 81:10 88:9 98:35 117:20
@wire and	1:9 9:9 67:9 68:9 81:10
and bin	81:11
took out	0:13 81:14 95:13
of tin	82:27
tin bin	81:8
all #n	44:62
#d piece	82:19
one of	82:23
use several	81:-8 82:61
s in	82:8 125:17
in piece	82:17
piece for	79:29 82:14 83:25
used #c	82:36
one on	17:35 82:19
took the	81:-12 82:17 87:11 97:29
piece $	0:27 8:40 82:15
one out	27:10 82:8
s out	82:12
&#n#o@wire	1:14
go into	18:13
s go	81:-12 82:21
asid job	83:10
asid everyth	83:11
everyth for	37:-8 73:24 83:37 84:9
asid all	83:13
asid what	83:11
is need	83:11
set it	55:26 83:12
all asid	83:18
set everyth	23:21 84:-8
everyth asid	23:17 83:23 84:-15
keep everyth	83:26
reserv everyth	83:14
everyth that	11:8 83:18 84:30 123:11
hold all	83:35 84:-17
everyth the	83:28
plan take	83:20
all that	23:8 83:33 84:14 123:11
that the	2:8 5:15 53:16 93:26 101:12 102:13 108:34 114:27 119:10 125:-10
plan use	83:17
hold what	83:11
reserv what	83:8
put everyth	83:34 84:-9
put it	1:-10 23:9 36:32 37:29 39:16 42:8 50:15 64:11 67:-13 72:13 95:33 98:8 125:21
@job asid	83:18
put all	83:9
#n asid	33:17
everyth job	83:9
reserv all	83:51 84:-8
all wire	8:26 19:15 20:16 21:-9 31:16
that job	48:40 73:13 83:34 84:-8
wire that	50:14 83:11
that @job	0:-12 13:17 23:-9 27:25 64:22 76:13 83:13 113:19
all piece	83:8
the piece	70:-29 81:9 82:32 84:11
piece and	23:31 83:26
and wire	23:34 43:-8 83:16
wire and	21:12 120:11
wire of	9:12 107:27 125:-8
let all	38:-10 84:54
all go	38:-9 81:10 84:52
let everyth	84:17
everyth go	84:8
go for	84:17
free everyth	84:15
releas everyth	83:-23 84:45
everyth set	83:-21 84:36
free all	23:-9 84:32 125:18
longer hold	84:26
hold anyth	84:56 125:-17
longer set	84:14
asid anyth	84:14
sole==	46:-58 85:99 98:-13
rat==ing	85:31
defin bar	85:50 86:-14
sole	46:-58 85:99 98:-13
sole radius	46:-29 85:45 98:-13
rat	16:-9 44:-14 46:-10 55:20 85:67 86:-9
rat #c	85:11
~ width	85:11 98:-9
in sole	46:-8 85:8
in width	76:11
ladder==	85:16
ladder	85:16
rat==ed	46:-10 55:20 85:36
narrow==	46:-8 85:16
new bar	85:11
flat sole	46:-37 85:42
sole flat	46:-22 85:26
narrow	46:-8 85:16
x==	39:13 74:11 85:23
bar call	86:14 125:25
x	39:13 74:11 85:23
mm x	85:12
x #n	39:13
x #d	74:11 85:13
rat for	55:20 85:26
defin the	49:10 88:-10
#d x	74:12
narrow bar	85:8
^ bar	85:28 86:17
~ is	55:-9 85:21 121:96
drop bar	86:39
bar name	85:9
remov bar	86:13
do no	86:9 100:15 106:25
longer have	86:22 100:54 122:-9 125:-9
we no	100:11 120:-9 122:39
support==	87:8
cradl==ed	87:37
bridge==s	13:-9 87:81
head==	0:12 25:-8 87:96 125:14
support	87:35
press support	87:8
cradl	16:11 87:126 94:-26
bridge	13:-9 87:81
noth bridge	87:41
#n noth	90:24 91:18
#n cradl	87:11
@job noth	90:11 91:10
head	0:12 25:-8 87:96 125:14
head clear	87:18
glue set	87:24
body==	58:10 87:105 89:13 107:-9
body	58:10 87:105 89:13 107:-9
in glue	96:21
taken out	72:19 75:-10 95:18
lie==s	3:14 4:-9 8:19 22:21 67:10 72:-11 87:25 89:25 92:20 94:-9
bridg==ing	87:9
soft==	49:8 80:-8 87:46
wood==	8:-9 22:31 87:49 89:-8 90:34
#n lie	92:21
bridg	46:10 85:-8 87:9
head is	87:43
is clear	87:41
noth bridg	87:9
soft	49:8 80:-8 87:46
wood	8:-9 22:31 87:49 89:-8 90:34
soft wood	87:44
cradl $	87:72 94:-9
neck==	8:-8 13:64 17:-11 24:-8 25:-8 29:-13 33:-8 43:-11 46:9 48:33 65:-8 76:9 85:8 87:31 91:-8 94:242 104:21 107:-12 108:-8 113:-9 114:-9 125:10
fresh==	71:14 72:-9 78:10 87:77 124:-9
neck	8:-13 9:-13 11:-8 12:63 13:63 15:-10 17:-12 24:-9 25:-14 27:-9 29:-14 33:-8 35:-9 36:-8 43:-11 46:9 48:33 65:-8 76:9 87:30 91:-9 94:239 98:23 104:21 107:-13 108:-9 113:-9 114:-9 125:9
the neck	13:36 16:11 46:10 85:8 94:60
neck of	13:35 16:11 94:55
@job lie	3:15
fresh	71:14 72:-9 78:10 87:77 124:-9
fresh glue	87:16
clear $	87:13
is $	41:20 51:-17 94:10 125:74
is noth	87:13
cradl==e	16:14 87:88 94:-23
the cradl	16:14 87:67 94:-20
longer cradl	87:9
^ head	87:26
head of	87:35
the head	87:17
touch==es	87:25
@job touch	87:13
touch $	87:22
#n touch	87:9
nut of	87:25
^ nut	13:46 17:-8 87:70 108:-14
in plac	54:12 108:17
plac $	1:20 25:17 87:12
the glue	20:9 57:13 87:45 125:-13
glue of	87:29 125:-9
set $	55:30 87:44 104:13 125:-13
glue on	87:36 125:-8
^ glue	87:22 125:40
is now	11:-11 36:16 47:17 64:26 96:19 118:11 121:18
wet==	87:9
wet	87:9
is wet	87:9
wet $	87:9
still fresh	87:50 124:-9
fresh $	87:52 124:-9
is soft	87:38
not set	87:15 125:-11
has not	31:26 65:-9 113:-12 114:-11 125:84
dri==ed	48:32 125:-14
dri	48:32 125:-14
dri $	48:32 125:-14
^ fresh	87:14
under job	87:50
^ noth	44:-10 84:15 87:43 91:47 93:37 125:43
bridge @job	87:24
bridge under	87:8
bridge the	87:25
bridge job	87:10
someth bridge	87:40
^ body	87:40 107:-8
body of	87:19
the body	16:8 87:8 89:10
#n begin	52:-8 111:17
body under	87:42
under @job	87:13
no clos	87:20
clos body	87:31
body on	87:32 107:-8
#n after	0:62 6:13 107:-10 114:37 125:25
no body	87:24
under it	90:27
body $	87:9
)~",
R"~(noth under	87:26 90:12
unsupport==ed	87:31
unsupport	87:31
is unsupport	87:10
unsupport from	87:10
longer unsupport	87:12
unsupport $	87:21
not bare	87:8
not unsupport	87:8
support==ed	87:27
along==	2:41 5:-10 13:17 17:32 45:25 80:-10 85:16 87:10 89:50 97:-10 122:26 125:-27
is support	87:10
along	2:41 5:-10 13:17 17:32 45:25 80:-10 85:16 87:10 89:50 97:-10 122:26 125:-27
all along	2:10 5:-8 87:14
along $	2:14 13:23
support to	87:19
to its	87:19
support $	87:9
hollow==	16:11 44:8 85:15 86:66 87:66 100:-14 125:-11
hollow	16:11 44:8 85:15 86:66 87:86 100:-14 125:-11
is hollow	87:17
hollow from	87:15
void==	2:-11 5:15 87:8
void	2:-11 5:15 87:10
void under	87:8
a hollow	87:11
hollow under	87:13
no hollow	87:33
hollow on	87:10
hollow==s	87:20
@job after	24:9 114:41 125:-9
hollow any	87:12
not hollow	87:14
hollow $	86:21
wood $	87:30
hard==	6:8 16:30 24:14 87:14 104:-12 125:40
hard	6:8 16:30 24:14 87:14 104:-12 125:40
is hard	87:12
^ wire	8:18 9:80 19:21 20:49 32:-9 49:-10 50:23 66:-10 88:22 91:28 121:10
wire size	88:26
@wire crown	49:-12 88:19
#d crown	80:-8
@wire tang	88:9
high and	17:41 97:20
height of	19:13 50:11 88:9
deep and	49:8 80:-8 88:21
thick $	49:8 80:-8 88:36
^ tang	39:-9 88:39 91:30
mm thick	88:10
barb==s	88:91
barb of	88:15
the barb	88:68
has crown	88:12
@wire measure	88:20
mm over	88:24
over the	28:13 88:23 89:12 93:11
barb $	88:20
wire measure	16:12 88:14
over its	87:11
its barb	88:17
felt==	75:-11 89:30 97:-9
^ read	8:20 75:-8 89:23
felt	75:-11 89:30 97:-9
felt rock	75:-9 89:13
#n felt	89:12
about #r	75:-10 89:16
held nutward	89:21
#n about	2:9 75:-8 79:11 89:15
#r about	89:8
rock to	89:8
pivot==	89:8
pivot	89:59
#n pivot	89:8
nutward to	0:-8 2:16
straight==	0:14 8:8 9:-9 13:30 41:15 45:-8 52:41 75:-8 89:22 94:111 95:-13 125:18
^ of	4:-12 8:13 9:-12 13:20 16:-9 45:-10 47:-8 87:-10 90:43 91:54 92:22 94:23 95:15 98:-8 99:15 117:19
straight laid	89:8
laid straight	89:8
is is	25:-10 89:55
it it	89:10
it its	1:10
is are	89:28
is its	41:-9 77:-11 91:10 93:40
rocker laid	89:13
sit==s	14:12 18:10 75:9 89:52 92:45 125:-9
sit	14:11 18:20 36:10 58:11 75:15 89:41 90:13 92:56 125:-11
are sit	90:10
is sit	92:12
stay==s	24:33 25:-10 85:10 91:12 101:10 102:21
#n till	52:10 109:-8 111:8
it lie	15:16
are $	19:9 71:8
straight $	13:36 41:19 94:95
laid across	89:12
across $	85:17
thru==	41:-8 92:23
thru	41:-8 92:23
^ for	0:13 1:-9 4:-15 5:11 6:54 8:-8 9:27 11:-12 13:-8 14:19 16:-12 17:-9 20:-11 21:11 29:-8 35:25 37:-24 41:9 42:-10 43:-8 45:14 47:-9 51:20 64:24 71:14 84:-12 91:43 92:12 94:13 95:9 96:12 99:-8 103:37 104:11 105:-13 108:-8 118:9 125:-10
#n straight	13:50 94:-40
#n edge	1:-8 3:10
centrelin==e	89:8
center==	89:12
centr==e	89:13
centerlin==e	89:11
#n down	16:-16 44:85 45:-13 75:23 77:-13 89:-10 92:54 97:72
down the	77:11 89:28 97:-8 125:-11
centrelin	89:8
center	89:12
centr	89:13
centerlin	89:11
centr line	89:9
along the	17:42 45:28 85:16 89:35 97:-10 122:26 125:-22
string==s	15:11
across the	16:11 41:24 44:-9
line on	89:11
string	15:11
across #n	89:12
edge on	125:10
edge along	17:-10 45:17
teeter	89:12
#n along	45:16 97:-9
rock over	89:11
over #r	45:20
rock==ing	45:12 89:15 97:-9
rocker rock	89:22
line $	89:8 92:32
between==	11:27 20:10 28:-8 43:43 45:-10 47:-9 54:19 72:-25 73:9 82:-14 89:31 90:32 95:-9 101:14 111:13
between	11:27 20:10 28:-8 43:43 45:-10 47:-9 54:19 72:-25 73:9 82:-14 89:31 90:32 95:-9 101:14 111:13
solid==	89:58 125:-8
solid	89:58 125:-8
over #n	89:51 95:-8
not rock	89:10 125:-10
@job flat	17:20
it sit	3:10 18:10 89:13
^ middl	17:36
wobble==s	89:9
around==	2:21 33:34 81:8 89:36
wobble	89:9
around	2:21 33:34 81:8 89:36
around fret	89:13
straightedg rock	45:10
tip==s	89:20 95:-8
nutward==	0:-8 2:15 3:-17 16:26 89:58 90:-18
tip	89:20 95:-8
it tip	89:20 95:-8
held down	89:17
down nutward	89:18
#n flat	15:11
solid on	89:22
down toward	89:11
toward nut	89:20 90:-8
nut end	36:14 76:14 89:20
rather==	2:9 125:23
littl==e	0:13 1:-10 2:9 3:9 4:18 7:12 9:-10 16:-8 21:9 27:-14 33:8 36:-8 40:22 41:-9 51:9 68:11 80:10 89:12 91:12 121:15
rather	2:9 125:23
is stand	14:-8 25:11
littl	0:13 1:-10 2:9 3:9 4:18 7:12 9:-10 16:-8 21:9 27:-14 33:8 36:-8 40:22 41:-9 51:9 68:11 80:10 89:12 91:12 121:15
bit==	0:76 1:16 3:9 8:13 13:-14 20:-9 22:-13 33:8 35:10 36:-15 38:9 39:-24 42:-10 74:9 89:42 92:10
still is	125:17
it still	1:17
yes==	36:58 89:15
yes	36:58 89:15
^ yes	36:58 89:15
yes it	89:11
now is	89:8
solid $	89:35
is rock	89:9
now it	52:26
seem==s	121:14
look==s	8:-12 13:-12 19:8 45:-13 89:111 94:10 107:13
seem	121:14
is look	15:10
#n look	13:-8 16:-11 17:12 45:-10 89:90
reflection==	125:39
dip==s	65:12
reflection	125:39
dip	65:12
besid==e	92:18
besid	92:18
pivot==s	89:34
pivot on	89:29
^ #r	4:-12 18:-13 89:94 91:42 97:9 125:-10
still still	89:16
still bit	89:8
bit still	89:9
too littl	41:-9 91:13
littl bit	0:9 21:12 33:10
bit $	8:12
bit proud	89:25
still $	8:15 9:-11
against==	13:-9 17:23 92:13
gap==	3:28 42:-9 82:-10 87:-11 89:52 90:209 91:19 93:-8 95:-8 114:-8
hold it	17:11 89:23 90:-8
it down	24:13 64:12 89:20 90:-10 125:-10
against	13:-9 17:23 92:13
gap under	87:-8 89:31 90:41 125:17
under fret	89:12
beneath==	41:-8 82:-9 87:18 89:13 90:37 92:20
hold down	89:23
end is	89:8
is gap	89:10 90:26
beneath	41:-8 82:-9 87:18 89:13 90:37 92:20
gap beneath	89:10
bodyward==	16:23 89:31 90:-11
held it	89:15
down bodyward	89:17
bodyward is	89:8
it nutward	89:13
beneath the	82:-9 87:15 90:37 92:12
gap below	89:30
push	2:8 11:-11 24:19 44:13 47:29 85:13 90:-11 118:12
^ push	11:-11 47:29 89:11 90:-10
no gap	89:35 90:64
below the	89:12 90:19 92:14
nutward no	89:17 90:-11
push==ed	44:14 90:-9 118:13
feeler==	16:-8 18:9 89:28 90:14 92:29
feeler	16:-8 18:9 89:28 90:14 92:37
nutward feeler	89:11
feeler goe	89:19
goe under	16:23 89:12 101:-8
snug==	89:8
snug	89:8
tight==	0:18 70:11 75:-9 90:52 125:-13
tight	0:18 70:11 75:-9 90:52 125:-13
tight on	89:-10 90:52
tight at	89:8
^ gap	89:19 90:11
bridg==e	46:10 85:-8
it held	89:9
#o with	89:8
held bodyward	89:11
when it	27:8 29:-9 89:10 114:13 125:9
whil==e	1:8 11:9 12:8 20:9 33:13 43:14 77:47
whil	1:8 11:9 12:8 20:9 33:13 43:14 77:47
#n whil	43:17
whil it	33:14
it was	1:-13 17:-9 19:10 24:19 39:12 40:20 70:10 73:13 75:-8 89:15 97:21 112:9 124:8 125:-13
was on	89:14
is along	89:12
rock==ed	16:15
pivot==ed	89:17
it pivot	89:29
crown gap	90:19
gap job	90:8
none	29:10 93:17 119:10
gap some	90:9
gap $	90:94
below crown	90:11
under of	90:9
crown the	107:11
the of	90:11
@job no	65:11 93:10 114:9
light==	89:13 90:70 98:24
light	89:13 90:70 98:24
#n light	90:23
light under	90:16
light below	90:24
noth beneath	90:20
has gap	90:16
a gap	3:10 82:-9 89:-13 90:34 125:20
have gap	90:14
have no	90:9 100:43 101:10 122:11
way==	2:13 9:-14 31:66 87:12 90:24 94:8 100:8 125:-8
way	2:13 9:-14 31:66 87:12 90:24 94:8 100:8 125:-8
the way	8:15 87:15 90:25 100:9
way down	90:25
down on	2:-8 16:19 44:8 89:-9 90:54 125:11
on board	90:32
caus==e	91:112
caus	91:112
^ caus	91:32
caus $	91:37
@job caus	91:9
no caus	91:46
wrong==	13:-11 17:23 60:13 69:30 91:53
wrong	13:-11 17:23 60:13 69:30 91:53
noth wrong	91:9
wrong at	91:37
crown #r	91:9
found==	0:-8 1:24 39:10 41:16 45:12 48:29 68:-8 69:15 74:9 91:65 119:9 125:-11
found	0:-8 1:24 39:10 41:16 45:12 48:29 68:-8 69:15 74:9 91:65 119:9 125:-11
found of	91:11
noth found	91:30
noth keep	91:33
#o up	91:9
shallow==	91:102
shallow	91:102
are shallow	91:10
shallow $	91:91
too shallow	91:39
is shallow	91:23
shallow slot	91:8
slot at	91:18
clog==ged	91:17
clog	91:17
clog $	91:17
dirty==	28:22 91:69
dirty	28:22 91:69
is dirty	91:65
dirty $	91:70
dirt==	0:-12 36:-12 91:78
is full	91:8
dirt	0:-12 36:-12 91:78
full of	91:19
#n dirt	91:17
dirt at	91:10
@job glue	91:11
dust==	77:23 91:15
dust	77:23 91:15
bottom==ed	91:34
bottom out	91:53
bottom==s	18:27 91:76
@job tang	91:11
tang bottom	91:68
@job bottom	91:16
kink==ed	40:44 77:30 91:53
kink	40:44 77:30 91:53
kink $	40:35 91:41
is kink	40:11 91:37
underbent==	91:44
underbent	91:44
is underbent	91:35
underbent $	91:44
under -	91:18
- bent	91:18
bent $	18:11 43:24 91:15
wire in	120:-12 121:15
)~",
R"~(wire kink	91:8
bent in	94:9
too wide	91:14
in its	87:8
its slot	41:-10 77:16 91:34
loos==e	0:-18 4:-12 18:9 60:13 84:21 91:110 95:12 96:8
loos	0:-18 4:-12 18:9 60:13 84:21 91:110 95:12 96:8
is loos	91:14
#n sit	89:31 92:23 125:-8
too loos	18:11 91:15
loos $	0:-15 4:-9 18:12 60:13 91:90
is wide	91:9
are loos	91:27
loos slot	91:10 96:8
it bottom	91:23
not bent	94:8
badly==	113:12
badly	113:12
noth was	91:21
was found	41:17 91:30
found $	91:54
caus was	91:9
^ stand	25:17 92:52
low job	92:13
@job below	92:15
#n below	41:-10 92:16
mm low	92:37
lower==	3:-10 19:9 41:-9 89:-9 92:89 97:19
lower	3:-10 19:9 41:-9 89:-9 92:89 97:19
in lower	3:-9 92:38
lower $	3:-9 92:67 97:20
in low	92:14
mm lower	41:-8 92:47
neighbour==s	41:-9 92:46
mm below	92:9
neighbour	41:-9 92:46
neighbour $	41:-9 92:28
#d below	92:26
below its	92:15
its neighbour	41:-8 92:32
low by	89:43 92:22
@job sit	92:12
sit low	92:12
#d low	92:15
neighbor==s	92:18
neighbor	92:18
neighbor at	92:18
it stand	13:49 16:-16 92:12
sit #d	92:27
^ last	21:17 45:-8 50:14 89:48 93:63 125:-14
last fret	41:-8 45:55 77:-9 92:10 93:69
ever==	1:-8 7:8 16:9 17:-9 22:13 33:24 40:9 55:8 77:-9 91:-9 93:129 100:10 101:-8 106:10 114:-9 119:14
#n #r	95:12
ever	1:-8 7:8 16:9 17:-9 22:13 33:24 40:9 55:8 77:-9 91:-9 93:129 100:10 101:-8 106:10 114:-9 119:14
last ever	93:13
ever of	93:14
is last	93:14
fret ever	93:12
ever $	93:42
ther will	53:-9 93:36 112:13
will ever	22:14 40:16
is #r	93:8
beyond==	40:11 77:26 87:18 93:79 125:-9
@job will	38:26 48:19
will be	4:14 14:-8 28:12 29:-28 45:-8 53:9 54:15 58:14 101:41 105:-10 111:34 112:12 115:17 118:15 125:24
be no	101:8
no more	52:45 53:-17 57:38 65:8 93:84 109:11 114:17 122:55 125:-27
beyond	40:11 77:26 87:18 93:79 125:-9
more beyond	93:38
beyond fret	93:12
are no	93:11
more fret	93:56 114:-9
fret after	93:37 114:-9
fret beyond	93:27
beyond #r	93:15
after slot	93:10
no fret	93:11
past fret	93:8
beyond slot	93:30
ever beyond	93:15
^ neck	94:56
neck $	13:64 29:-10 94:33 104:21
neck @job	94:12
is straight	13:-8 94:63 125:13
still straight	94:8
#n neck	13:-9 94:48 125:16
neck look	94:8
@job neck	13:-15 76:12 87:31 89:14 94:42
neck is	13:-14 46:10 48:37 85:-9 94:14 125:17
neck straight	94:25
backbow	94:10
backbow $	94:10
bow==ed	27:15 63:12 94:45
bow	27:15 63:12 94:58
bow $	27:16 94:22
back -	94:24
- bow	94:24
hump==ed	94:12
hump	94:75 125:-8
hump $	94:49
is hump	94:9
hump==	94:63
neck has	94:18
a hump	94:51
^ hump	94:11
hump in	94:18
in neck	94:13
relief==	94:105
too much	5:12 16:11 42:20
relief	94:105
relief $	94:81
a bit	35:12 36:-14 89:24 125:17
bit of	0:26 1:13 20:-9 22:51 79:30 82:8 125:-20
is bow	94:9
^ relief	94:9
relief in	94:23
straighten==ed	94:80 125:-10
straighten	94:80 125:-10
^ straighten	94:18
straighten neck	94:10
straighten the	94:28 125:-8
straighten $	94:41
been straighten	94:17
it straight	94:38
reseat==ed	4:-9 13:-8 30:-21 43:-8 45:-9 72:-8 91:-8 95:226 97:-11 118:-9 119:23 125:46
reseat	1:-8 4:-9 13:-11 30:-22 43:10 44:-10 45:-11 72:-8 89:-8 91:-11 93:-8 95:281 96:-16 97:-16 118:-9 119:23 124:32 125:62
^ reseat	95:115
reseat job	95:16
reseat fret	95:8
reseat #r	95:8
pull and	72:10 95:39
and reseat	95:16
shim==med	45:-12 91:-10 95:127 96:-10 97:-11
shim	45:-12 77:-9 91:-10 95:145 96:-10 97:-11
shim $	91:-8 95:34
were pull	72:13
and shim	95:17
are reseat	95:26
reseat $	95:42
reseat at	95:29
&#n#o#t@job	95:9
afresh==	95:38
afresh	95:38
#n afresh	95:26
afresh $	95:34
again @day	95:12 115:8
^ shim	95:66
shim #n	95:23
shim and	95:30
^ glu	96:121
glu @job	96:28
glu down	96:19
down fret	96:22
clamp==ed	95:-20 96:149 97:-11
clamp	17:-8 45:-10 90:-8 91:-11 94:9 95:-22 96:223 97:-14
clamp fret	96:25
glu fret	96:29
glu and	96:40
and clamp	95:-14 96:58
clamp down	96:8
^ clamp	96:51
clamp and	94:11 96:20
and down	96:10
down #r	101:8
are glu	96:8
were glu	96:10
is glu	96:24
clamp $	96:47
are clamp	96:11
levell==ed	4:-8 13:-10 16:-11 17:-17 24:-8 33:52 43:-9 45:-9 75:-13 82:-8 89:-12 97:246 107:-8 125:-8
^ levell	27:41 97:114
levell at	97:14
levell slot	97:23
levell fret	97:13
level==ed	91:-8 97:94
#r @day	97:17
levell $	17:18 97:57
is levell	97:37
was level	97:33
level yesterday	97:23
were level	97:29
sand==ed	17:-15 26:9 97:69
sand	0:-10 17:-16 25:22 46:-8 89:-8 97:68 101:12 102:9 103:12 105:11 106:13
^ sand	97:29
sand fret	97:29
^ fil	25:-12 97:32 103:26
down yesterday	11:8 97:8
took fret	97:20
@job down	16:-13 44:9 77:10 96:18 97:15 108:33
setup==	98:31 99:89 103:-8 104:-9
minute==s	1:-9 5:-8 16:-12 27:23 30:-11 35:14 36:-8 45:21 71:-10 75:23 85:-14 89:-10 95:-8 96:14 98:27 99:67 101:-9 102:16 103:-11 104:131 105:25 106:-8 107:16 108:33 115:-13 124:-8 125:15
defin machin	98:59 99:-10
setup	98:31 99:89 103:-8 104:-9
minute	1:-9 5:-8 16:-12 27:23 30:-11 35:14 36:-8 45:21 71:-10 75:23 85:-14 89:-10 95:-8 96:14 98:27 99:67 101:-9 102:16 103:-11 104:131 105:25 106:-8 107:16 108:33 115:-13 124:-8 125:15
setup minute	85:-13 99:26
minute #n	85:-13 99:20 104:8
#n name	85:-13 98:26
~ setup	98:19
machin ~	58:-12 98:83
new machin	58:-14 98:112 100:-9
machin call	98:56
a machin	35:8 98:51 100:46 103:-9
we now	52:15 99:8
now have	99:9
add machin	98:29
chang machin	99:27
machin machin	98:-11 99:15
sander setup	99:22
#n machin	98:-8
have #c	99:17
#c belt	99:16
#n press	13:10 16:74 44:32 99:50 125:-50
#c press	99:17
#n belt	99:13
#n sander	99:36 102:11 125:40
are enough	99:35
enough belt	99:9
enough sander	99:15
enough bench	99:11
min==	99:22 104:27 120:29 121:-9
set up	98:24 99:59 104:-21
up sander	106:18
sander take	99:8
min	99:22 104:27 120:29 121:-9
#n min	104:28
min $	99:16 104:26
up bench	29:-8 106:32
bench take	99:14
#n minute	1:-8 16:-9 27:-9 30:-10 35:15 43:9 45:21 71:-10 75:23 89:-9 96:14 98:25 99:42 101:-8 102:18 104:86 105:28 106:-8 107:17 108:35 115:-13 124:-8 125:16
minute $	98:23 99:43 104:71 105:19
up press	106:12
up belt	106:12
take #c	99:18 104:9 121:8
#c min	99:17
set -	99:37
- up	99:37
#c minute	104:10
to set	98:11 99:14 104:-8
^ belt	25:-8 101:31 102:54
minute to	98:8 99:12
need no	99:50 103:-9
no set	99:29
bench need	99:18
no setup	98:14 99:13
setup $	98:26 99:24
call belt	99:14
sander to	55:-8 99:49
press ~	99:40
renam press	99:26
call sander	99:29
sander ~	99:19
drop machin	100:56
no sander	100:15 101:27
sander any	100:23 106:19
no press	100:11 101:34
press any	100:12
no bench	101:26
bench any	65:29 125:-13
no belt	100:13 101:21
remov machin	100:68
number==	0:21 1:-9 2:-11 3:38 4:-21 5:-22 6:9 10:-12 11:-15 12:-10 13:37 14:12 15:-10 17:-19 22:-16 25:-9 29:-24 30:-16 33:-18 36:11 37:14 38:-10 39:-14 40:15 42:-16 45:48 47:9 55:-11 59:18 60:46 64:16 65:37 70:42 73:23 75:-11 76:-8 81:-9 83:-8 87:-8 90:8 92:12 94:-14 97:8 99:16 100:-12 101:77 102:54 104:-11 105:-11 106:32 107:-9 108:-11 110:-8 111:-10 113:-8 114:-12 115:-8 116:17 117:-20 118:15 119:8 125:33
^ machin	98:-10 100:-11 101:17 102:50
machin down	98:8 101:21
sander number	101:36 102:39 125:-8
number #c	58:8 59:26 60:25 101:17 102:8
bench number	101:32
sander until	101:29
begin tomorrow	111:13
press number	101:28
#n number	97:27
yesterday machin	102:11
sander #n	99:-14 101:69 102:34 105:-8
down from	101:9
till this	111:16
from this	10:12
servic from	101:8
number is	102:12
sinc #n	0:-8 22:16 37:14 96:10 101:27 107:25 125:-9
press brok	125:12
brok $	39:-14 101:41 125:20
number brok	101:22
brok down	118:9 125:12
going to	3:10 11:-21 12:-23 29:68 39:-14 58:12 65:-9 83:16 97:12 107:25 108:-10 112:9 125:35
be out	101:13
broken==	25:34 40:14 48:25 86:16 94:-9 99:-11 101:59 102:-10 108:19
#n will	42:-18 50:-14 93:10 101:13 102:8 115:14 117:27 118:8 125:11
broken	25:34 40:14 48:25 86:16 94:-9 99:-11 101:59 102:-10 108:19
press will	101:18 102:11
be down	101:10
#t to	28:-9 54:27 101:17 105:15 109:-11 111:29
all day	53:-9 101:53
day becaus	53:-8 101:19
order on	101:18
@day all	101:15
down for	0:15 26:43 55:9 105:13 112:13
all tomorrow	105:14
sander doe	100:13 101:9
work all	101:10
tomorrow morn	11:39 26:40 101:14 105:9 125:-8
bench #n	101:25 102:35 125:-9
sander next	26:15
sander all	105:14
be back	101:18
back at	24:-32 45:-11 101:10 107:82 125:56
)~",
R"~(back yesterday	101:27 102:-17
bench #c	101:27 102:-9
take bench	101:10 105:10
till yesterday	111:8
take sander	103:13
servic for	86:15
not use	5:12 101:50 110:-13
use bench	101:10 102:16 110:-9
till #n	52:9 54:31 109:-19 111:42
number $	13:-33 17:-8 125:79
machin up	98:-9 100:-8 102:52
is up	38:21 45:11 65:50 102:29
are back	95:8 102:19
work again	102:64
press work	102:23
again #n	102:8
#n work	102:34
run again	102:32
back servic	102:10
number back	102:9
back into	102:16
into servic	102:16
put sander	102:9
sander #c	102:10
#n back	37:39 38:33
bench again	102:12
will stay	101:-10 102:37
stay in	25:-10 102:21
stay servic	101:-14 102:39
^ stag	100:-8 103:50 104:37
stag machin	100:-8 103:57
cut need	103:26
^ corner	103:28
level need	103:25
^ polish	25:-17 27:26 43:19 103:57
seat need	103:33
usual==	9:16 28:-8 52:-11 54:13 103:13 109:-17 110:-8 111:57 112:24 113:67 125:-19
the need	44:14
need its	103:13
usual	9:16 28:-8 52:-11 54:13 103:13 109:-17 110:-8 111:57 112:24 113:67 125:-19
its usual	103:13
usual machin	103:13
usually==	5:-10 27:47
board need	103:8
need what	103:8
what it	1:-10 40:-8 69:38 103:8
usually	5:-10 27:47
it usually	103:8
usually need	103:8
bend need	103:12
stag minute	104:30
minute stag	104:20
stag recheck	107:8
bend stag	103:13
22==	104:29
^ doing	104:17
22	104:29
22 take	104:17
hour==	16:-9 26:-9 28:-11 29:35 38:18 41:8 43:-11 44:9 45:9 70:20 82:8 95:11 98:9 102:11 104:93 105:42 108:9 110:-9 125:-23
take us	27:26 32:-11 104:32
an hour	16:-8 38:19 41:9 43:-10 44:11 45:11 70:20 82:8 95:20 98:11 102:11 104:41 105:42 108:10 125:-8
22 fret	104:11
quarter==	98:12 99:10 108:19
us a	50:23 51:9
quarter	76:18 98:12 99:10 108:18
a quarter	98:12 99:10 108:19
quarter of	98:12 99:10 108:19
of an	92:12 98:12 99:10 108:19
check slot	107:11 115:10
minute for	27:34 104:13
half==	4:-8 37:-10 42:10 45:-9 53:-8 54:14 55:31 61:11 68:15 69:15 74:13 82:13 84:10 95:9 104:41 105:22 106:14 107:15 108:34 111:8 125:-15
half	4:-8 37:-10 42:10 45:-9 53:-8 54:14 55:31 61:11 68:15 69:15 74:13 82:13 84:10 95:9 104:41 105:22 106:14 107:15 108:34 111:8 125:-15
take half	104:11
half an	82:15 95:10 104:28 105:9
take an	104:9
true take	104:13
report==ed	11:-13 33:57 38:-9 104:100
take as	104:19
as long	104:19
long as	104:19
as is	104:8
report	0:-8 9:-8 11:21 13:15 16:-20 19:-8 20:-9 21:20 25:-9 27:17 29:-15 33:81 35:29 38:-10 61:8 102:10 104:119 124:41 125:-15
is report	104:23
report $	33:35 104:70
been report	104:11
take what	104:53
was report	11:-10 38:-9 104:59
book me	105:34
me belt	105:21
book press	105:13
for half	61:12 105:10
now for	105:15
&#o#r@person	110:-8 111:18
book the	125:26
like==	0:-16 2:10 9:12 10:19 13:29 16:-12 18:9 19:9 26:18 29:15 37:14 45:8 53:-10 55:18 58:9 59:11 73:11 75:-14 105:24 109:-8 111:16 112:13 121:14 124:8 125:-26
we would	0:9 105:9 112:19
like	0:-16 2:10 9:12 10:19 13:29 16:-12 18:9 19:9 26:18 29:15 37:14 45:8 53:-10 55:18 58:9 59:11 73:11 75:-14 105:24 109:-8 111:16 112:13 121:14 124:8 125:-26
would like	13:21 16:-8 18:14 19:10 26:10 27:8 55:19 105:9
tomorrow afternoon	105:31
afternoon for	105:31
mine for	69:20
&#r#t	54:16 105:12
put me	105:11
me down	105:11
me for	37:13
&#n#o@day@job	115:18
i want	4:8 6:8 7:16 16:8 51:21 98:11 114:14
want belt	105:10
#r we	105:12
we want	9:35 99:21
book==ing	16:-9 26:40 48:-9 105:-8 106:202 111:-9 125:57
cancel book	106:30
book #c	106:11
book #n	106:59 125:59
cancel my	106:22 124:12
my book	106:20
by @person	43:18 64:12
my press	106:27
cancel it	48:10 106:47
cancel that	106:14
that book	106:26
i not	23:26 106:15 125:-14
free up	29:-16 106:74
give back	83:-19 84:44 106:53
unbook==	25:-8 106:94
unbook	25:-8 106:94
^ unbook	25:-8 106:94
unbook press	106:46
sander today	106:22
unbook belt	106:21
^ start	43:-10 52:26 89:-9 107:94
start job	15:-31 29:39 33:57 125:-12
@person at	12:-8 33:17 61:15 64:10
polish job	43:23
crown at	19:14
start==ing	43:-11 52:26 89:-10 107:98 108:-9 125:-9
am start	107:28
have start	107:22
start pull	107:15
am begin	107:8
hammer	27:11 77:58 125:45
are start	107:9
start to	103:11 107:50
the file	4:11 16:17 97:17
bend of	43:40
start==s	58:22 87:29 107:-8 111:16
tang on	88:11 107:10
has start	103:11
@person goe	111:23
went on	33:35
now cut	71:9
@job now	47:17 84:13 107:12
now sinc	107:8
am now	107:14
#n now	1:-11 2:-8 17:-9 29:36 36:-10 39:14 41:-18 42:-9 43:-9 64:20 65:-11 72:-14 75:81 77:-13 78:15 85:16 89:-9 91:-10 98:8 99:28 107:33 120:-13 121:10
are now	71:9 74:12
dress==ing	13:-10 25:-10 27:13 55:50 103:18 104:18 107:60 108:21 125:-9
am going	29:-8 32:10 65:28 108:15
are going	11:-12 12:-21 29:37 107:21 108:13
on true	107:16
going on	29:11 39:15 107:8
carry==	47:9 49:11 100:10 107:10
carry	47:9 49:11 100:10 107:10
resum==ing	107:52
resum	13:-8 43:-12 107:102
^ resum	13:-8 43:-12 107:102
resum @job	107:37
continu==e	107:14
continu	107:39
^ continu	107:39
continu job	107:29
resum==e	107:49
resum job	107:19
continu==ing	107:25
resum pull	107:23
is being	43:-13 107:79 113:-8
being pull	107:31
pull sinc	107:20
nip==ped	39:16 77:27 107:14
being tru	107:33
tru $	43:12 107:49
sinc yesterday	33:14 42:11
stop job	108:10
stop the	108:19
stop==ping	108:66
am stop	107:-15 108:37
stop work	63:8 108:47
paus==ing	43:-9 108:31
paus	43:-19 95:-9 97:79 107:-20 108:156
am paus	108:20
paus $	108:87
interrupt==ed	43:-8 108:88 111:-8
interrupt	43:-8 108:88 111:-8
work this	108:16 109:-28 111:47
are stop	108:20
tak==ing	2:10 5:-10 27:21 43:10 64:24 107:-13 108:29 110:42 125:-8
break==	52:26 89:-8 108:59
tak	2:10 5:-10 27:21 43:10 64:24 107:-13 108:29 110:42 125:-8
am tak	64:24 108:10
tak a	108:39
break	52:26 89:-8 108:111
a break	52:26 89:-8 108:28
break $	108:59
hav==ing	3:12 43:18 47:8 62:16 108:10 122:11
hav	3:12 43:18 47:8 62:16 108:10 122:11
hav a	108:11
rest $	92:16 97:11 108:11 119:11
paus==e	95:-8 97:82 107:-12 108:104
a paus	108:10
are tak	108:16
stop pull	107:-10 108:17
paus with	107:-10 108:45
^ paus	43:-10 95:-8 97:80 108:68
stop with	107:-11 108:35
now #n	121:21
work with	64:27 108:10
have stop	108:23
stop on	108:20
stop at	93:11 108:11
paus==ed	108:21
lunch==	44:-14 60:9 107:-10 108:91 115:17 125:35
are off	108:22
lunch	44:-14 60:9 107:-10 108:91 115:17 125:35
to lunch	108:19
lunch $	44:-14 107:-10 108:92 115:18 125:35
am off	110:55 125:-16
for lunch	108:32
^ out	70:12 82:-11 86:15 101:-9 108:24
out to	47:16 108:14
we out	8:53 9:-26
am out	108:8 110:17
^ lunch	108:47
^ break	108:83
the day	14:-12 28:37 45:10 79:11 108:30 110:-8
we done	10:-8 13:29 108:10
home==	0:-12 1:18 29:-10 43:22 48:11 54:12 94:-8 95:28 108:55
home	0:-12 1:18 29:-10 43:22 48:11 54:12 94:-8 95:28 108:55
going home	54:12 108:40
home $	43:22 108:56 110:-10 125:9
call==ing	108:8
it a	101:-8 102:11 108:58
off home	108:24 110:-8
own==	2:-15 5:14 8:16 28:-23 33:24 43:-8 72:18 75:-10 83:17 92:10 98:11 109:59
own	2:-15 5:14 8:16 28:-23 33:24 43:-8 72:18 75:-10 83:17 92:10 98:11 109:59
^ own	28:-21 109:60
own hour	28:-20 109:56
@person hour	26:-12 28:42 109:15
work @day	52:21 109:51 110:-16 112:-8
here @day	109:22 116:9
@day @person	111:34
work from	109:24 111:-13
work shop	28:-12 109:29
shop hour	28:-17 109:37
work the	14:-12 28:21
whenever==	28:-15 51:9 109:42
whenever	28:-15 51:9 109:42
work whenever	28:-15 109:42
whenever the	109:14
whenever we	28:-10 109:28
^ day	108:-8 110:30 111:29
me ~	110:10
even last	110:10
off this	110:14
ill==	28:-17 29:-11 61:-10 62:-14 63:-12 110:60 125:61
ill	28:-17 29:-11 61:-10 62:-14 63:-12 110:60 125:61
away for	13:-10 23:42 31:22
away on	110:10
away from	28:-8 32:-8 60:18 81:12 109:-9 110:33 122:12
out from	101:12
me off	110:12
am away	107:11
@person will	28:-8 29:-11 110:28 111:13
not come	42:-11 50:-15 73:-31 110:54 117:19 119:51 125:13
not be	38:11 48:20 53:-9 86:16 93:14 101:17 109:-8 110:46 111:-9 112:15 118:8 122:8 125:-33
be here	28:26 110:21 118:25 125:-10
tonight becaus	110:9
i will	4:13 11:8 16:-21 29:-14 33:-9 36:59 43:-14 64:50 94:-18 105:-10 108:-11 110:13 111:14 112:-8 114:-10 125:102
here #r	109:-8 111:32
morn off	110:12
week off	110:33
@day off	110:46
off becaus	110:12
get==s	0:-18 1:10 4:9 5:26 14:-9 32:-10 33:-15 36:29 37:-12 39:10 73:19 83:9 101:11 125:86
)~",
R"~(have next	110:9
#r off	110:13
here only	109:18
come only	118:19
yesterday on	111:13
come from	1:-23 5:9 19:-9 32:12 33:45 73:-20 125:37
in only	111:17
am in	111:21
goe early	111:9
leave==s	74:11 111:11
leave	74:11 111:11
@person leave	111:11
goe home	111:8
home early	111:9
leav==e	3:10 13:-14 33:-12 43:-14 64:13 108:64 110:29 111:25 114:25 115:12 125:63
leav	3:9 13:-15 29:-8 33:-12 43:-14 64:13 108:64 110:20 111:25 114:25 115:12 125:94
i leav	33:-10 108:12 111:35 125:36
leav early	111:23
go home	43:23 108:-8 125:18
leav the	13:-11 43:-12 62:12 108:39 114:28 115:15
work only	109:-13 111:24
am here	111:12
today @person	111:22
tomorrow after	28:-8 53:10 111:8 112:23
#o after	111:24
work next	28:12 29:-10
@day as	52:-12 54:-11 112:22 125:40
as usual	52:-8 110:-8 111:49 112:24 113:67 125:-19
usual $	52:-8 109:-17 110:-8 111:64 112:25 113:36 125:-19
#r as	111:14
today as	111:26 125:-16
am not	79:10 82:-16 108:-9 110:-47 111:21 125:72
not off	110:-46 111:22 125:43
reopen==	112:151
reopen	112:151
^ reopen	112:151
reopen day	112:35
day day	112:22
not clos	52:-8 53:-50 112:81
are not	48:28 53:-36 112:25 113:18 125:28
work day	111:-8 112:21
day after	45:10 111:-8 112:24
a open	112:25
open day	112:24
day again	112:24
reopen the	112:39
reopen on	112:24
priority==	13:-11 113:172 114:-9
priority	13:-11 113:172 114:-9
^ priority	113:26
priority job	113:10
#n priority	113:34
priority #n	113:76
@job priority	113:23
has priority	113:24
priority #c	113:13
priority of	113:39
the priority	113:19
very==	87:15 113:31
very	87:15 113:31
is very	113:31
very urgent	113:14
goe first	113:12
#n come	1:-19 5:32 33:43 41:19 113:12 114:13 116:22 117:-11 125:-9
come first	113:19
@job come	73:25
@job first	113:24 114:29
#n first	113:17 114:19
priority $	113:29
important==	113:89 125:-8
important	113:89 125:-8
is important	113:11
important $	113:34
very important	113:17
rush==	13:-14 47:11 54:10 113:137 114:-9 125:-9
rush	13:-14 47:11 54:10 113:137 114:-9 125:-9
a rush	113:15
rush $	54:10
rush job	13:-12 113:88
top==	4:9 12:30 32:-9 36:-13 37:22 41:9 54:-8 71:12 75:-8 88:11 113:65
top	4:8 12:30 32:-9 36:-13 37:21 41:9 54:-8 71:11 73:25 75:-9 88:11 89:-8 90:8 97:24 104:12 113:65
on top	12:30 54:-8 113:65
top $	12:30 54:-8 113:65
put job	113:22
a priority	113:22
hurry==	13:-10 47:17 113:87
hurry	13:-10 47:17 113:87
a hurry	113:39
hurry $	47:22 113:16
can wait	108:21 113:82 114:-18
wait $	11:31 12:37 113:82 114:9
not urgent	113:45
no hurry	47:19 113:48
hurry with	113:42
urgent any	113:25
is as	113:8
@job as	16:9 74:8 113:38
#n as	17:-10 42:42 43:59 54:9 73:13 93:19 95:46 125:-8
^ after	114:74
after job	114:62
other==	0:10 1:10 2:8 6:12 36:20 50:-14 53:-9 83:-8 84:11 92:18 112:13 114:31 117:28 125:-23
more ~	93:-10 114:16
other	0:9 1:9 2:8 6:11 14:35 17:-12 36:20 50:-15 53:-10 83:-18 84:30 92:35 112:13 114:31 117:36 125:-24
other job	84:11
after @job	15:9 114:36
must wait	114:21
wait==s	114:68
#n wait	114:46
come after	10:-8 13:28 93:18 114:10
after the	6:13 114:34 115:29
goe after	114:24
#n befor	0:54 1:-8 16:9 39:12 114:22
@job befor	114:25
befor job	114:43
befor @job	114:25
goe befor	114:9
come befor	113:8 114:14
is befor	114:25
then==	0:-18 1:11 11:10 27:11 29:13 105:8 113:-19 114:56 115:15 125:18
then	0:-18 1:11 11:10 27:11 29:13 105:8 113:-19 114:56 115:15 125:18
first then	113:-12 114:33
then job	113:-12 114:32
first and	114:23
and then	114:23
then @job	114:18
not begin	114:18
not start	107:-8 114:8 125:10
not wait	28:10 114:51 125:-10
need not	28:10 38:10 114:34 125:-20
^ look	0:22 13:54 39:-15 45:29 89:-14 115:62
look again	115:81
on yesterday	115:20
check job	94:8 115:25
check fret	41:15
to yesterday	115:10
delay==	58:16
delay	58:16 117:-9 118:45 119:21
delay the	58:16
@job until	37:15 114:27
put off	115:8
postpon==e	115:9
postpon	115:9 118:22
^ postpon	115:9
@job till	97:12 114:30
i shall	100:11 115:26
shall check	115:18
^ yesterday	36:9 50:-11 74:9 95:26 115:9 116:12
yesterday i	36:9 50:-11 74:9 115:10 116:12
remind==	11:28 115:12
remind	11:28 115:12
^ remind	11:28 115:12
remind me	11:28 115:12
me of	115:12
@wire order	9:-9 31:20 88:-10 117:54 118:-11 119:18
order #n	10:-12 31:-8 48:-10 50:-21 116:40 117:73 118:86 119:74 125:29
stick each	121:16
order #c	116:28 117:22 118:22 119:11
~ due	116:16
due @day	11:8
order a	50:-19 116:31
order #d	116:25
have order	116:14
order at	10:11 117:12 119:27
put in	0:13 72:11
put an	39:15
plac==ed	2:-9 38:16 50:-15 72:13 89:10 97:-9 116:23
plac in	2:-9 72:13
^ arriv	117:21
arriv order	117:14
#n order	9:12 10:12
order is	31:-14 118:12 119:28 121:20
here in	120:19
order came	117:22
came at	117:10
has arriv	99:15
came yesterday	117:10
#n arriv	117:35
arriv in	116:12
~ came	117:23
here tomorrow	28:27 110:12 118:26
~ arriv	117:17
~ has	121:18
arriv tomorrow	117:9
^ rest	117:29 118:43 119:32 125:-11
rest arriv	117:8
rest came	117:10
rest is	17:-10 45:17 117:27 118:15 119:16 125:-10
stick have	117:15
have arriv	117:11
coil==s	12:8 50:11 67:-11 117:13 120:14 121:17
coil came	117:14
came rest	117:11
rest come	117:13 118:10
other==s	14:35 17:-11 83:-11 84:20 92:17 117:8
come #o	2:-8 16:25
came noth	117:9
noth more	117:18
more is	117:18
arriv noth	117:9
arriv and	117:22
and that	53:14 89:-11 93:40 112:-10 117:25
rest on	117:10
receiv order	117:37
receiv the	117:26
got order	117:24
got the	1:-8 16:14 26:43 28:-10 31:-12 36:28 41:18 70:-8 72:9 82:13 102:24 117:32
the delivery	5:-8 19:16 73:18 117:15 118:12
delivery came	117:24
came from	117:11
delivery from	117:19
parcel==	50:16 117:79
parcel	50:16 117:79
a parcel	117:11
parcel from	117:17
^ parcel	50:18
us the	6:13 117:20
order promis	118:14
promis order	118:24
com only	118:11
@wire will	118:15 119:12
will come	42:-18 118:31 125:23
today now	118:28
december now	111:29 118:11
instead==	18:16 36:19 47:50 54:22 109:-17 111:14 117:-10 118:62
instead	18:16 36:19 47:50 54:22 109:-17 111:14 117:-10 118:62
today instead	118:16
instead $	18:16 117:-9 118:62
@day now	47:35 118:25
tomorrow instead	54:12
#o now	118:17
@day instead	109:-14 111:15 118:24
com tomorrow	118:8
tomorrow now	118:24
~ will	118:21
com the	118:9
postpon==ed	118:22
is postpon	118:13
is mov	118:10
order was	118:9 119:8
was postpon	118:9
postpon until	118:10
delay==ed	118:53
was delay	118:18
delay until	118:25
delay till	118:8
is delay	118:35
@wire was	118:13
delay to	118:20
rest will	119:34 125:-8
december instead	118:13
arrive today	118:10
~ ship	118:25 120:-12 121:15
deliver on	118:26
expect==	67:12 68:-9 118:73
expect	27:15 31:11 50:-23 66:-16 67:12 68:-9 116:-8 118:70 125:42
^ expect	50:-19 66:-16 118:72 125:45
expect order	118:24
expect the	118:32
@wire today	118:24
expect @wire	118:17
@wire next	50:-23 66:-19 125:67
cancel order	48:-8 117:-15 119:55 125:39
was cancell	112:9 119:13
cancell becaus	119:13
be com	48:21
com becaus	119:16
not com	31:-8 62:13 63:-11 119:62 125:-18
never==	10:-10 35:17 50:16 55:8 79:-8 93:38 96:-9 97:10 104:8 109:40 110:-14 111:-14 119:13 122:13 125:96
never	10:-10 35:17 50:16 55:8 79:-8 93:38 96:-9 97:10 104:8 109:40 110:-14 111:-14 119:13 122:13 125:96
will never	93:10 119:14
never come	93:10 109:41 110:-13 111:-13 119:14
come becaus	119:11
pack==	32:42 49:-53 56:-57 120:106 121:8
defin supplier	32:-10 120:75 121:-8 122:-17
pack	9:-10 32:116 49:-54 56:-57 67:-53 120:164 121:82 122:-10 125:-9
pack length	49:-25 56:-25 120:50
#d pack	121:10
~ pack	49:-34 56:-25 120:70
pack #c	49:-9 56:-13 120:19 121:10
pack #n	49:-9 56:-16 67:-8 120:41
#n pack	56:-13 121:26
pack mass	49:-9 120:23
mm pack	49:-9 121:20
g pack	120:27 121:-20
#c pack	121:14
minimum==	32:45 51:23 117:-9 120:-22 121:105 122:-9
supplier name	120:14
minimum	32:45 51:23 117:-9 120:-22 121:105 122:-9
g minimum	121:10
#n minimum	120:22 121:-19
minimum #n	120:-17 121:21
~ minimum	121:9
in pack	32:16 67:-10 120:45 121:-17
gram pack	120:13 121:-10
pack==s	32:73 67:-53 120:58 121:75 122:-8
a supplier	120:82 121:-26 122:11
pack of	67:-31 120:30 121:50
stick pack	67:-16 120:40 121:-21
pack #d	67:-8 120:54 121:-45
#d minimum	120:17 121:-17
day pack	120:-15 121:15
minimum of	120:12 121:20
)~",
R"~(coil pack	120:23 121:-17
supplier call	120:38 121:-15
stick minimum	120:-17 121:17
pack $	32:35 120:-16 121:24
add supplier	120:35 121:-32
minimum #d	120:-15 121:18
coil minimum	121:10
in minimum	120:-13 121:13
mm minimum	120:-14 121:14
new supplier	120:59 122:-8
can order	120:37 121:13 122:-11
from now	29:-14 52:18 54:-12 55:59 57:18 58:37 61:18 63:-8 99:27 101:-13 103:31 120:16 121:26 122:-11
amount==	9:15 121:13
chang supplier	121:13
~ any	122:16
amount	9:15 66:14 121:13
any amount	121:13
lead of	120:-14 121:21
time #n	98:12 120:9 121:10
~ sell	120:-19 121:33
sell wire	120:-12 121:17
sell in	32:18
ship wire	120:-8 121:8
wire only	120:-11 121:14
only in	110:-14 111:23 120:-13 121:15
deliver wire	121:8
only pack	121:8
^ pack	32:22 120:-9 121:22
pack from	120:-8 121:22
~ are	121:26
the pack	120:-12 121:43
pack at	32:15 121:10
~ hold	121:12
^ minimum	121:16
the minimum	32:11 51:24 121:27
minimum from	121:12
minimum at	32:11 121:8
^ lead	121:21
a year	22:21 61:12 121:26
year $	7:-8 19:-12 20:50 21:40 22:17 62:-12 106:-8 119:35 121:25 125:27
day now	112:9 121:32
sell any	121:8
any length	121:9
amount $	121:11
deliver any	121:16
no minimum	121:34 122:-9
minimum $	32:38
drop supplier	32:-8 122:56
remov supplier	122:39
anymor==e	48:32 53:-9 60:9 100:11 112:10 121:17 122:30 125:-27
longer order	120:-10 122:49
anymor	48:32 53:-9 60:9 100:11 112:10 121:17 122:30 125:-27
~ anymor	122:35 125:-8
anymor $	53:-8 60:10 112:10 121:17 122:30 125:-12
we not	2:9 122:21 125:-8
forget not	123:24
forget what	34:-11 123:18 124:8
what you	34:-12 123:23
clear what	34:-17 123:29
delet==e	34:-32 57:12 100:18 103:-9 122:36 123:55
delet	34:-32 57:12 100:18 103:-9 122:36 123:55
^ delet	34:-32 57:12 122:12 123:55
clear all	123:15
clear sentence	34:-8 123:16
forget the	86:15 122:27 123:12
delet sentence	34:-14 123:23
forget sentence	123:18
delet the	34:-10 57:12 122:13 123:19
undo==	29:-11 30:-8 35:50 124:148 125:62
undo	29:-11 30:-8 35:50 124:148 125:62
^ undo	124:132 125:-15
undo $	124:87 125:-13
take it	35:11 57:11 65:11 86:28 100:18 124:41
it back	35:17 38:9 95:11 124:35
take that	57:12 104:17 112:9 122:12 124:30
that back	112:9 124:35
undo it	124:51
undo that	35:-24 124:19 125:74
take back	53:-13 112:28 124:30
last one	124:14
suit $	0:-8 16:-9 18:81
lot $	5:15 7:11 19:19 23:32 66:9 73:10 81:9 83:-10 84:64
measur $	0:-14 4:42 41:41 50:-8 76:17 79:27 125:9
receiv $	50:18 104:23
extra $	54:26
receiver $	35:13 56:37 57:68 100:-14
weigh $	67:11 125:40
new $	5:-8 71:19 95:18
size $	74:32 88:24
width $	76:31 85:8
several $	35:14 81:30 82:41
after $	10:-9 13:29 33:-8 114:22
,==	0:32 1:10 2:39 3:29 4:10 5:31 6:-8 7:18 10:12 12:37 14:16 15:-10 16:15 18:18 19:24 20:10 22:13 23:17 27:40 29:18 30:32 33:12 34:-20 35:32 37:28 38:-25 39:35 45:14 46:66 48:13 49:59 50:18 51:-49 52:-27 54:48 56:23 57:11 58:58 60:-19 62:9 63:17 64:-19 65:-17 69:23 70:-9 73:-15 74:-33 75:-24 77:20 78:10 79:44 80:24 82:-26 83:-22 84:-34 85:46 86:23 87:-13 88:-23 89:-33 92:-15 93:-30 95:14 96:-9 97:10 98:43 99:-9 100:20 101:20 103:-16 104:-11 105:13 106:-15 107:-31 108:19 109:-9 113:-33 114:-46 115:-15 116:11 118:-27 119:-17 120:31 121:-8 123:-19 124:40 125:-48
,	0:32 1:10 2:39 3:29 4:10 5:31 6:-8 7:18 10:12 12:37 14:16 15:-10 16:15 18:18 19:24 20:10 22:13 23:17 27:40 29:18 30:32 33:12 34:-20 35:32 37:28 38:-25 39:35 45:14 46:66 48:13 49:59 50:18 51:-49 52:-27 54:48 56:23 57:11 58:58 60:-19 62:9 63:17 64:-19 65:-17 69:23 70:-9 73:-15 74:-33 75:-24 77:20 78:10 79:44 80:24 82:-26 83:-22 84:-34 85:46 86:23 87:-13 88:-23 89:-33 92:-15 93:-30 95:14 96:-9 97:10 98:43 99:-9 100:20 101:20 103:-16 104:-11 105:13 106:-15 107:-31 108:19 109:-9 113:-33 114:-46 115:-15 116:11 118:-27 119:-17 120:31 121:-8 123:-19 124:40 125:-48
#n ,	0:49 1:-26 2:15 3:8 4:16 5:16 7:-9 9:-8 10:-12 12:-9 13:39 15:-19 17:19 18:36 21:-10 22:-26 23:8 24:17 27:-31 28:-8 29:10 30:8 32:-10 33:9 35:-10 36:-46 37:-12 38:-28 39:-9 40:28 41:58 43:-22 44:16 47:20 48:-34 49:-21 50:9 52:37 53:-15 54:-36 55:-10 58:-9 64:26 66:22 67:-9 68:-11 69:14 70:37 71:13 72:16 73:31 75:21 76:18 77:25 78:-19 79:-26 80:38 81:14 82:17 84:-17 85:-24 89:37 90:-12 91:43 95:13 96:23 97:23 99:-9 101:8 102:-13 104:-17 105:-22 106:13 107:-15 108:-34 109:-14 110:-9 111:34 113:-24 115:-18 116:-13 118:22 119:11 120:-24 124:-8 125:-31
, slot	0:31 1:-12 3:-24 4:-36 13:49 16:-8 18:-10 33:29 36:29 37:26 41:-16 42:-8 70:12 71:17 76:24 77:-14 91:35 125:-8
, what	0:42 2:-15 5:38 9:13 11:34 13:35 16:38 17:-11 18:-10 19:-15 21:13 22:11 23:9 24:-13 27:9 28:-8 29:9 30:21 32:-12 33:17 43:-13 84:-9 125:15
^ need	0:35 7:16 8:-10
a fret	0:17 3:24 13:50 32:-9 35:13 41:-9 93:10 125:-9
- @job	0:13 1:-16 2:-12 3:-11 5:26 6:-16 11:-9 13:28 15:12 16:-17 17:13 18:10 24:11 27:38 29:29 33:31 36:-19 37:8 38:-11 41:18 42:-14 44:-16 45:-16 47:-8 48:32 64:10 70:13 73:22 75:-8 77:-15 82:-24 83:17 84:-14 87:16 89:8 90:-10 91:-12 93:-14 94:8 97:-10 107:20 114:27 125:-11
a short	0:12 3:-14 42:22
short #n	0:12 3:-15 42:22 75:10
#n that	0:29 3:-13 17:14 39:10 72:9
?	0:89 1:-11 3:142 4:33 5:21 6:-20 7:-20 8:150 9:136 10:-52 11:106 13:122 14:-9 15:105 16:168 17:117 18:26 19:71 20:-24 21:60 22:79 23:60 24:35 25:90 26:111 27:66 28:82 29:118 30:94 31:68 32:49 33:110 34:-8 35:96 36:-56 37:-36 38:-32 39:-30 40:-52 41:-32 42:-29 43:-32 44:-53 45:-32 46:-9 47:-43 48:-24 49:-12 50:-18 51:-25 52:-11 53:-20 54:-31 55:-20 57:-16 58:-14 59:-12 60:-9 61:-13 62:-14 63:-14 64:-47 65:-34 66:-18 67:-11 68:-9 69:-22 70:-16 71:-12 72:-19 73:-15 74:-20 75:-27 76:-22 77:-59 78:-28 79:-13 80:-14 81:-16 82:-12 83:-36 84:-28 85:-17 86:-49 87:-29 88:-26 89:-98 90:-19 91:-35 92:-27 93:-22 94:-53 95:-31 96:-17 97:-38 98:-14 99:-23 100:-15 101:-37 102:-25 103:-20 104:-22 105:-19 106:-33 107:-43 108:-28 109:-24 110:-52 111:-16 112:-28 113:-49 114:-27 115:-25 116:-20 117:-23 118:-31 119:-19 120:-17 121:-23 122:-12 124:-41 125:148
would make	0:17
inch==es	0:12 1:15 55:54 68:15
@wire ,	0:62 1:60 5:76 7:-11 8:37 9:28 16:-8 18:17 20:-21 21:-8 22:-21 32:-20 33:35 36:8 37:14 39:40 40:-9 46:10 50:-13 51:-12 66:30 67:12 68:12 70:-10 72:-12 81:-20 85:-14 88:13 116:22 118:-10 119:22 125:-22
, finish	0:19
inch	0:12 1:27 49:10 50:-11 55:54 68:15 76:21 92:11
#d inch	0:12 1:16
inch ,	0:17
, anyth	0:33
which bit	0:11 23:25
@job ,	0:34 1:-34 2:49 3:25 4:34 5:-18 12:-8 13:75 15:48 16:41 17:33 18:8 20:-8 23:-11 26:-8 27:-34 29:-37 30:-16 32:-13 33:-9 36:26 37:-11 38:8 45:-12 46:-10 47:14 48:11 64:12 65:30 70:-21 71:23 72:27 74:-8 79:-10 82:42 87:-20 89:-18 90:-8 91:15 92:13 93:35 94:-9 95:-13 97:33 105:-11 107:48 108:-14 114:-15 125:-25
slot ,	0:11 4:8 95:8 120:9
^ and	0:100 1:-10 4:-18 8:32 9:19 11:36 13:-31 14:-12 16:21 17:68 18:-10 19:-12 20:-26 21:80 22:-10 23:93 25:-9 27:99 29:-28 30:33 32:-8 33:-36 35:-10 36:52 37:-9 38:-13 40:-12 43:-18 44:-13 45:-15 47:28 50:-21 52:-11 55:-8 59:12 66:41 70:13 75:76 81:-24 82:-27 83:-28 84:-10 86:-27 87:-10 89:-23 90:37 91:-13 92:52 95:-33 96:-17 97:-19 99:-11 105:27 107:-8 108:-9 114:-14 116:40 117:-13 125:-17
same==	0:91 1:20 4:53 5:-10 6:27 7:-8 8:-8 11:-11 13:26 16:49 18:-16 20:-18 23:-24 27:-11 33:-10 36:10 37:-22 38:-13 39:65 40:-8 43:-31 47:-11 48:-10 49:-13 59:11 60:-8 64:-13 65:-10 73:27 74:76 83:32 84:-30 89:15 91:-9 95:47 105:-11 107:-18 108:-17 109:15 113:42 114:-17 125:-18
same	0:91 1:20 4:53 5:-10 6:27 7:-8 8:-8 11:-11 13:26 16:49 18:-16 20:-18 23:-24 27:-11 33:-10 36:10 37:-22 38:-13 39:65 40:-8 43:-31 47:-11 48:-10 49:-13 59:11 60:-8 64:-13 65:-10 73:27 74:76 83:32 84:-30 89:15 91:-9 95:47 105:-11 107:-18 108:-17 109:15 113:42 114:-17 125:-18
^ same	0:102 1:27 4:66 6:-35 13:-62 16:63 17:-12 18:-10 23:-20 36:-14 37:-20 38:-10 39:67 43:-14 49:-13 73:30 74:-8 83:47 84:-23 105:-9 107:-12 108:-12 113:70 114:-11
same for	0:53 1:-11 4:73 6:31 11:-8 13:55 16:59 17:-11 18:-12 20:-17 23:-17 27:-8 37:-14 43:-15 64:-8 73:-15 83:50 84:-25 105:-8 107:-12 108:-12 113:56 114:-12
even==	0:31 1:18 20:11
, even	0:31 1:9
even if	0:17 1:20
nip a	0:25 125:-12
a lot	0:15 1:20 125:-12
lot off	0:25 125:-12
mind==	0:19 37:10 38:30 48:25 65:-9 105:11 125:50
)~",
R"~(mind	0:19 37:10 38:30 48:25 65:-9 105:11 125:50
never mind	0:16 125:65
the wast	0:16 40:16 81:11
, pull	0:29 72:-12 122:10
are fine	0:13 102:8
too $	0:22 2:27 15:-8 55:-8 58:41 87:30 90:53 91:-12 94:12 96:13
includ==ed	14:10
any piec	0:27 37:-9
, old	14:10 78:23
old pull	39:16 72:-8
pull one	0:20 72:-10
includ	0:44 8:9 11:11 14:54 19:16 29:-9 53:14
includ $	14:10 53:15
, #o	0:14 42:11 53:16 65:11 76:20
#o fret	0:33 3:15 16:-8 17:-12 36:33 37:11 41:8 42:19 45:-11 78:16 93:-14 97:9
fret ,	0:8 17:-9 27:25 29:-11 30:44 36:-14 37:21 46:38 70:12 72:8 76:-10 78:-11 82:-12 92:11
, is	0:23 3:26 8:16 18:23 41:-8 42:-8 62:-8 63:12 88:8
.==	1:-10 2:-10 3:11 4:-17 6:-8 9:-10 11:-19 13:-26 16:-35 17:-21 18:-11 20:-8 22:-8 23:-20 24:-8 26:-21 27:-11 29:-12 32:-13 33:-17 36:21 37:26 39:14 41:-13 42:11 43:17 44:-9 45:16 47:-10 48:8 52:-10 53:23 55:15 56:31 57:17 58:10 64:-16 69:17 70:18 71:12 72:8 73:-10 74:13 75:19 76:-10 77:45 79:22 80:-11 81:9 83:33 84:30 87:-14 88:-15 89:-29 92:9 94:-8 95:-17 98:18 99:-17 100:35 101:-23 102:10 103:-8 105:41 106:33 107:25 108:20 113:-9 114:-11 115:-16 116:-8 117:10 118:15 119:30 120:48 121:-22 122:13 124:11 125:-33
am on	107:46 108:-11
.	1:-10 2:-10 3:11 4:-17 6:-8 9:-10 11:-19 13:-26 16:-35 17:-21 18:-11 20:-8 22:-8 23:-20 24:-8 26:-21 27:-11 29:-12 32:-13 33:-17 36:21 37:26 39:14 41:-13 42:11 43:17 44:-9 45:16 47:-10 48:8 52:-10 53:23 55:15 56:31 57:17 58:10 64:-16 69:17 70:18 71:12 72:8 73:-10 74:13 75:19 76:-10 77:45 79:22 80:-11 81:9 83:33 84:30 87:-14 88:-15 89:-29 92:9 94:-8 95:-17 98:18 99:-17 100:35 101:-23 102:10 103:-8 105:41 106:33 107:25 108:20 113:-9 114:-11 115:-16 116:-8 117:10 118:15 119:30 120:48 121:-22 122:13 124:11 125:-33
#n .	36:22 37:10 39:-13 42:10 43:-10 47:-8 48:-15 65:9 70:-8 75:23 77:61 79:31 82:11 89:-12 91:18 92:23 93:14 107:-8 108:41 113:-12 114:-11 125:-21
. which	1:12 39:-10
dig==	0:16
dig	0:16 53:11
me out	0:32 8:20 72:-10
out a	0:12 2:14
drop==s	0:16 51:28
a dress	0:10 1:9
millimetre==s	0:42 1:-10 3:33 4:-11 7:24 16:10 18:14 39:9 41:18 50:-9 55:30 85:9 88:20 92:11
, #n	0:68 3:-14 4:20 5:-13 7:31 8:-8 11:13 13:-33 16:75 17:-26 20:-10 22:28 23:-12 24:-8 27:50 28:59 29:25 32:-9 33:-28 36:-47 37:-29 38:-18 39:23 40:-21 41:-19 42:-37 44:14 45:45 46:34 47:8 48:-13 52:-25 53:-18 55:-8 64:-10 65:-10 66:15 67:28 70:-24 73:-15 75:24 76:-20 77:20 78:-16 79:20 80:50 81:14 82:53 85:29 87:-9 89:-16 90:-24 91:15 93:-58 95:19 96:9 97:37 98:23 101:-21 105:38 106:-8 107:-15 108:-9 109:-29 111:25 113:-10 114:-14 117:-24 118:-12 120:-10 121:32 125:-23
millimetre	0:42 1:-10 3:33 4:-11 7:24 16:10 18:14 39:9 41:18 50:-9 55:30 85:9 88:20 92:11
#n millimetre	0:38 3:42 4:-10 7:20 49:11 50:-8 55:11 85:9 88:20
millimetre $	0:55 1:-9 55:31 88:20
cm==	0:39 1:-8 8:-9 39:19 41:11 51:23 66:-10 68:18 76:12
cm	0:39 1:-8 8:-9 39:19 41:11 51:23 66:-10 68:18 76:12
#d cm	0:40 8:-8 39:21 41:11 66:-8 76:12
cm of	0:40 8:-9 39:13 66:-8 68:18
, do	0:46 1:-13 3:25 8:-13 9:17 15:10 33:10 38:-24 39:-9 40:10 66:-8 69:-13 101:20 125:48
have it	0:61 1:-10 8:-9 16:8 29:-13 30:18 33:16 38:10 39:-9 65:20 115:15 120:19
hand==s	0:20 14:10 15:15 19:10 64:24
hand	0:17 8:102 9:-9 13:-9 14:8 15:40 23:-9 28:-8 29:-18 31:-9 33:-8 58:16 64:30 66:18 69:38 79:-10 97:10 107:-10
^ hand	0:21 64:9
hand full	0:21
, job	0:-12 1:-10 3:20 4:-16 5:16 11:-9 13:21 15:-15 16:21 17:38 18:17 23:30 27:14 29:-10 30:-10 37:-16 42:35 43:-21 44:39 45:17 48:-23 64:-8 65:-16 72:-11 73:-9 76:-11 77:-16 83:-8 87:-11 89:76 90:44 91:21 92:10 93:10 95:18 96:12 107:-12 108:-12 113:-19 114:-24 115:-10
replac==e	0:16
^ if	1:-13 3:-11 5:11 9:19 19:8 25:8 27:21 28:9 29:10 30:12 33:10 36:-16 45:-8 89:-15 125:125
@job had	0:16 72:9
had to	0:10 13:-9 35:21 43:-8 45:-9 72:63 78:11 95:9 108:41 125:-9
come out	0:15 5:39 20:25 42:-28 72:10 73:25 95:12 125:36
out ,	0:16 1:10 20:31 65:16 95:12 121:14
replac	0:16 3:9 30:11
here ,	0:-8 1:15 5:-8 8:9 14:10 35:18 39:9 115:14
, any	9:12 18:37
home for	0:-11 1:21
for it	1:11 37:-9 64:18 83:32 106:16
is piec	1:12 23:48 125:-11
tin ,	0:-8 1:12 5:-14 7:13 21:-9 22:25 33:16 42:-8 72:-8 79:35 81:15
, wher	1:73 3:8 4:23 17:11 20:11
would that	16:20
found a	119:10
, #d	0:-38 1:-10 2:34 3:-11 18:-10 36:-8 38:-12 39:63 40:-16 41:34 42:15 44:-12 49:-9 66:-10 68:23 69:14 70:-16 72:18 76:32 77:-10 78:44 80:81 82:-20 88:24 116:9 125:-9
, who	15:42 23:15 26:12 28:-10 29:22 33:36 58:12 62:-9 63:12 125:-16
use it	0:-11 86:11 101:12 102:9
take piec	1:30 23:17
already==	1:15 11:42 13:65 15:11 23:15 29:-8 39:-11 44:-18 47:12 102:11 107:12 118:26 125:-20
#d ,	0:-23 1:-11 2:55 3:83 16:-9 39:16 41:-31 42:-19 50:-14 69:-13 74:9 78:23 80:80 82:-21 88:-9 92:8 116:20
already	1:15 11:42 13:65 15:11 23:15 29:-8 39:-11 44:-18 47:12 102:11 107:12 118:26 125:-20
end already	1:21 39:-10
already dress	1:19 39:-10
raw==	1:20 3:14 39:17
a @wire	85:16
question==	0:-12 1:51 35:44 36:-10 38:-8
question	0:-12 1:50 23:-13 35:98 36:-10 38:-8
for piec	0:-16 1:56 36:-10 38:-8
sorry==	1:61 8:-10 29:-9 110:69
sorry	1:61 8:-10 29:-9 110:69
^ sorry	1:61 8:-10 29:-9 110:69
sorry ,	1:61 8:-10 29:-9 110:69
, it	1:40 3:-40 9:-10 17:-11 18:-16 23:-12 25:-9 30:-10 31:-9 36:-18 37:39 38:15 39:11 40:-10 41:34 42:31 43:26 47:-8 48:-9 55:-11 57:26 65:-8 69:23 77:35 85:23 87:29 89:-23 92:8 94:43 98:12 100:-9 101:15 102:16 105:8 106:-8 113:24 118:9 119:10 121:20 124:-8 125:-9
most==	2:19 24:12 55:9 124:33
go ,	1:8 39:12 62:23
most	2:19 24:12 55:9 124:33
most of	2:9
it come	20:17 49:11 116:12 118:11
come off	0:-10 1:15
i used	35:12 125:18
used piec	0:16 1:-8 33:10 36:13 37:-10 70:8 125:20
nearest==	0:-13 1:16
, which	1:26 4:-12 5:11 8:-8 11:-12 13:-8 15:14 16:-11 17:18 18:11 24:34 25:13 26:21 29:-8 32:38 89:-15 96:18 120:18 125:17
nearest	0:-13 1:16
i've==	1:14 2:-15 3:-9 4:8 13:-17 14:10 17:-12 28:9 33:13 35:31 36:28 42:10 43:29 44:17 45:-10 48:-8 50:-10 64:14 72:-15 74:-8 78:-12 79:8 83:23 89:-9 96:24 107:39 108:27 114:-10 116:13 125:39
inch==	1:12 49:11 76:18 92:11
hand==	1:9 8:96 29:-15 31:-9 58:17 66:22 69:39 79:-9 97:11 108:14
i've	1:14 2:-15 3:-9 4:8 13:-17 14:10 17:-12 28:9 33:13 35:31 36:28 42:10 43:29 44:17 45:-10 48:-8 50:-10 64:14 72:-15 74:-8 78:-12 79:8 83:23 89:-9 96:24 107:39 108:27 114:-10 116:13 125:39
^ i've	1:13 2:-13 14:11 29:10 33:-8 35:16 37:11 42:13 43:39 44:18 45:-9 49:8 64:22 72:-14 78:-11 79:9 83:24 89:-8 96:25 107:-14 108:-10 116:8 125:18
an inch	1:12 76:18 92:11
inch and	1:12 55:19 76:18
and a	1:17 79:11 88:17 96:8 104:18
a half	104:19
half of	1:12
in my	1:12 25:-8 26:23
my hand	1:12 64:24 107:-8 108:10
hand ,	1:12 66:9
or==	1:16 3:68 10:54 11:-17 17:54 18:28 25:40 30:-10 32:15 41:-13 42:-33 43:-8 47:-20 65:10 79:13 89:-8 104:-13 125:32
a slot	0:-14 1:33 3:-13 18:10
or	1:16 3:68 10:54 11:-17 17:54 18:28 25:40 30:-10 32:15 41:-13 42:-33 43:-8 47:-20 65:10 79:13 89:-8 104:-13 125:32
#n or	0:-10 1:27 79:8
or is	0:-17 1:26 17:24 18:23 25:11
long .	1:17 3:19 50:25
wher $	1:34 13:29 16:22 17:-14 40:-8
to look	11:20 58:14 61:13 125:-11
tomorrow==	8:-9 9:-11 11:43 14:-31 15:-9 16:-13 23:-8 25:-18 26:73 28:88 29:49 30:-11 32:-8 33:-13 35:-8 53:33 54:21 55:-9 83:-9 84:-11 99:-9 100:-9 101:18 102:-13 105:30 106:8 108:-28 109:-13 110:26 111:30 112:18 115:38 117:-10 118:33 125:43
^ everyth	11:42 33:33 52:-18 73:26
recheck on	11:27 45:8
ahead==	11:79 29:-10 36:21 55:11 57:18
ahead	11:79 29:-10 36:21 55:11 57:18
any recheck	11:62
long have	4:-15 8:-8 9:19 11:74 27:-25
clock==	11:46 29:-16 62:11
clock	11:46 29:-16 62:11
the clock	11:46 29:-16 62:11
@job -	11:30 13:-10 16:63 17:-10
- promis	11:30 118:24
when $	9:26 11:20 25:-38 28:-29 29:56 30:23 31:24 33:38
day ,	10:-9 13:8 14:-13 22:26 26:9 28:37 62:33 103:18 113:10 121:-9 122:10
wise==	11:28 16:-11 17:23
press ,	11:15 25:45 45:16 55:9 85:15 101:-14 102:19
wise	11:28 16:-11 17:23
- wise	11:28 16:-11 17:16
wise $	11:28 16:-11 17:16
drawer==	1:-21 2:-8 3:-8 7:8 8:16 18:-8 22:43 30:-8 36:10 39:42 42:12 72:10 78:9 79:29 80:-12 82:8 125:17
@wire drawer	7:8 8:19 22:23
metre==s	8:11 9:-9 21:12 50:9 51:69 66:33 79:-13 116:-12 118:-9 121:20
metre	8:11 9:-9 21:12 50:9 51:69 66:33 79:-13 116:-12 118:-9 121:20
)~",
R"~(many metre	8:14 21:13
metre of	8:13 21:12 66:23 79:-11
meant==	0:29 8:53 15:24 29:8 31:20 36:-10 37:10 70:-13 71:8 125:10
no ,	0:24 8:53 16:83 30:-9 37:82 47:38 54:-9 75:-10 89:-17 100:-13 101:33 105:-10 124:27 125:-20
, i	0:-20 1:-17 2:-17 3:-10 8:48 9:-9 13:18 16:-11 17:-9 18:-9 22:-14 29:11 33:-8 39:-15 40:21 41:26 43:8 53:9 60:12 66:22 67:-14 69:12 70:12 72:8 74:17 75:-10 77:20 78:16 80:9 85:15 88:10 92:14 100:8 101:-10 104:8 107:-10 108:11 110:-19 113:21 116:-8 124:13
meant	0:29 8:53 15:24 29:8 31:20 36:-10 37:10 70:-13 71:8 125:10
i meant	0:31 8:54 70:-13 71:8 125:11
many bit	8:18 9:-10
@wire piece	8:40 79:28
put by	8:20 23:20 83:17 84:19
read me	8:20 33:14
what length	0:-23 4:52 8:24 22:-17
length of	0:-9 1:11 3:-14 4:11 8:23 22:-17 41:66 69:22 72:12 78:-13 80:11 82:-19 92:-9 120:10
lie in	8:24 22:-17 72:-9 75:10 78:10 87:27 94:-9
accord==ing	8:13 17:11 24:9 113:14 121:11
ther be	8:15 11:10 12:10
accord	8:13 17:11 24:9 113:14 121:11
accord to	8:13 17:11 24:9
to you	8:16
you $	8:16 37:10 38:24 73:10 114:30
pleas==e	2:9 3:-13 5:-23 6:59 8:25 9:-27 11:17 12:16 15:17 16:-24 17:28 22:16 23:27 24:-10 27:-8 28:-16 30:-13 31:36 32:23 33:10 35:30 37:13 41:8 42:-9 43:-30 44:-13 45:-16 46:8 47:-12 48:14 55:12 57:47 58:18 59:12 60:28 64:-15 65:21 66:-13 70:-10 71:-12 73:18 77:-15 78:-8 79:-8 82:-10 83:-10 85:-11 89:-11 90:-9 91:-15 92:-15 98:-13 99:-10 100:9 103:-11 105:-19 106:19 111:-8 112:9 113:-9 114:-9 115:10 117:-8 118:-11 119:14 120:-8 124:29 125:-48
wire on	8:39 10:8 16:-9 18:9 120:19
on hand	8:98 29:-29 31:-9 66:22 69:39
pleas	2:9 3:-13 5:-23 6:59 8:25 9:-27 11:17 12:16 15:17 16:-24 17:28 22:16 23:27 24:-10 27:-8 28:-16 30:-13 31:36 32:23 33:10 35:30 37:13 41:8 42:-9 43:-30 44:-13 45:-16 46:8 47:-12 48:14 55:12 57:47 58:18 59:12 60:28 64:-15 65:21 66:-13 70:-10 71:-12 73:18 77:-15 78:-8 79:-8 82:-10 83:-10 85:-11 89:-11 90:-9 91:-15 92:-15 98:-13 99:-10 100:9 103:-11 105:-19 106:19 111:-8 112:9 113:-9 114:-9 115:10 117:-8 118:-11 119:14 120:-8 124:29 125:-48
pleas $	0:10 4:-12 6:68 8:26 9:-15 12:12 17:19 19:-12 20:19 23:11 29:18 30:-12 31:16 32:40 35:22 39:9 46:9 57:39 59:-11 60:24 65:24 73:14 83:-13 84:-10 85:-9 98:-16 100:15 105:-9 106:15 107:-11 108:-11 119:21 122:-8 125:-16
we left	5:8 8:-16 9:18
put on	9:33 10:-14 16:22 17:-12 31:-9
wire order	9:31 10:-17 31:14
@wire we	8:-16 9:14 23:23 31:-9 51:12 119:24
, or	0:-8 3:15 8:8 18:9 125:19
get more	9:16
ring==ing	9:36
ring	8:9 9:44 113:11
supplier ,	9:35 10:36 29:-8 32:-11 120:13 122:-9
get us	5:8 9:20
^ shop	9:40 10:16 112:9
for wire	6:-8 8:22 9:29 10:34 23:-10 28:-16 29:-11 31:30 35:-11
many more	8:-21 9:33
situation==	8:-10 9:59
situation	8:-10 9:59
eat==	9:19 51:9
eat	9:19 51:9
pass ,	16:37 55:11
, @job	13:-20 15:-9 16:13 17:16 33:31 38:24 41:28 42:-8 43:64 76:9 90:31 92:-8 106:-8 108:45 113:-9
how hard	16:30 24:14
hard do	16:30 24:14
whol press	16:32
press schedul	16:37 26:-8 29:43 101:-10 105:-8
lb==	5:-14 16:29 44:29 45:-8 55:92 85:29 125:16
kilo==s	16:10
go to	16:10
kilo	16:10
the hollow	16:9 44:18 85:8 86:27 100:-12
hollow bar	16:14 44:16 85:8 86:41 100:-13
re==	2:69
re	2:69
to re	2:19 16:8
re -	2:69
load $	16:16 24:61
ram==	3:-16 16:54 25:-12 101:22
, if	42:10
ram	3:-16 16:54 25:-12 101:22
the ram	16:28
ram stand	16:24
trebl==e	16:23 17:66 27:-8 89:43
@job side	13:-9 17:15 45:11 89:58 97:-10
lean==	16:12 58:11
lean	16:12 58:11
, how	2:26 5:43 8:53 9:-8 13:37 16:34 17:-11 19:-17 20:-8 21:19 24:-13 25:21 27:18 32:26 35:23 44:-16 77:-9
and how	4:16 5:-10 19:13 20:20 21:-16 29:8 32:27
much $	8:52 16:12 21:-8
the short	16:53 42:-12 44:25 75:-10 85:28 86:10 101:-9 125:35
short bar	16:47 42:-11 44:33 75:-10 85:27 86:19 101:-9
^ pass	16:41 44:8
, the	0:-10 2:-21 3:-13 8:-8 11:23 12:33 14:14 16:13 17:-19 18:-11 19:-8 20:-10 23:30 25:-10 26:-10 27:16 28:-15 29:-14 30:-22 32:-15 38:9 41:10 43:-9 44:-10 45:46 47:55 48:23 50:28 53:9 65:20 67:-20 68:-8 72:-21 77:16 78:30 87:-10 88:22 91:-9 93:13 94:10 97:-8 98:-9 99:-11 100:-15 101:51 102:18 104:8 105:-14 106:-12 108:-8 112:-9 117:34 118:9 119:-13 121:11 122:-8 125:35
reading on	17:30
the edge	16:-20 17:20 42:19 45:31 89:11 92:10 125:11
edge next	17:31
, next	10:14 16:17 17:25 26:8 28:30 30:25 125:-8
?==	22:23 29:11 125:-16
^ good	102:17
good enough	0:-10 3:14
enough to	17:26
to call	17:26
how doe	2:10 5:16 13:41 16:-13 17:14 27:-12 29:-13 35:65 75:-11
look ,	16:-10 17:16 45:33
line of	17:14 92:8
^ whol	14:33 17:30
so==	0:-21 1:-26 2:52 3:-29 4:9 6:-10 7:-11 9:-17 10:-14 11:-9 14:19 15:-9 16:-9 17:50 18:8 19:-9 21:10 24:9 27:-12 30:-25 31:-8 32:-8 37:8 39:18 41:10 42:-13 43:-12 44:-16 45:-12 48:18 50:-19 51:10 53:-8 55:8 57:18 58:14 59:8 60:10 62:9 63:-14 64:19 66:-9 68:12 73:28 74:-8 75:19 78:-16 80:-23 82:10 83:16 85:-8 86:8 89:-23 90:-9 94:-8 98:-10 99:30 100:12 103:22 104:-10 105:-19 106:14 110:-9 111:9 112:19 115:18 116:8 117:-10 119:29 125:-54
culprit==	17:56
so	0:-21 1:-26 2:52 3:-29 4:9 6:-10 7:-11 9:-17 10:-14 11:-9 14:19 15:-9 16:-9 17:50 18:8 19:-9 21:10 24:9 27:-12 30:-25 31:-8 32:-8 37:8 39:18 41:10 42:-13 43:-12 44:-16 45:-12 48:18 50:-19 51:10 53:-8 55:8 57:18 58:14 59:8 60:10 62:9 63:-14 64:19 66:-9 68:12 73:28 74:-8 75:19 78:-16 80:-23 82:10 83:16 85:-8 86:8 89:-23 90:-9 94:-8 98:-10 99:30 100:12 103:22 104:-10 105:-19 106:14 110:-9 111:9 112:19 115:18 116:8 117:-10 119:29 125:-54
^ so	17:56 36:13
so which	0:11 12:8 17:53
which #n	6:14 17:46 51:22 89:-14 125:28
culprit	17:56
any low	17:57 92:-8
low fret	17:21 92:11
rock==	16:-11 17:67 45:-8 82:-11 89:46 93:-17 125:28
did #n	17:64 24:14 89:-22 125:-19
sunk==	13:-8 17:54 89:46 93:-8 125:-10
sunk	13:-8 17:54 89:46 93:-8 125:-10
or not	3:17 17:22 125:-9
not ,	17:22 25:13 94:28 112:10 125:-28
#n been	17:10 33:50 77:-26
been levell	17:14
ther still	9:12 17:15
tell us	13:-9 17:20 35:18
span next	16:-9 17:45
verdict==	17:39
verdict	17:39
sander==	8:-9 9:-8 11:-15 13:-8 14:-13 17:-12 23:-8 25:52 26:83 28:-18 29:14 30:-8 33:-16 35:-11 38:-19 43:-9 48:-17 52:-9 53:-9 54:-8 55:-10 57:-8 65:-13 77:20 84:-9 89:-8 98:-14 99:47 100:80 101:81 102:62 103:86 104:-15 105:58 106:91 108:-9 110:-12 112:-8 113:-10 125:20
@job get	5:17 13:17 28:-12 29:32 73:19
turn==	0:-9 11:-8 29:39 84:21 101:14
^ plan	5:18 29:39
agenda ,	29:68
happen==ing	29:45 33:-8
#n yet	13:17 15:22 33:-9 40:-9 125:31
- what	13:19 125:-11
bound $	13:33 27:8
fan==ned	13:30
squar==e	13:30
fan	13:30
, and	0:-26 1:13 3:-11 4:9 5:-14 8:-10 10:38 11:-19 16:-14 17:-20 18:12 20:-16 25:-14 27:-22 29:42 30:8 31:32 32:8 33:26 40:12 41:15 44:9 45:36 49:9 53:9 61:10 62:-8 63:9 67:8 74:9 75:9 87:15 89:-17 95:-15 98:-10 99:14 101:-12 102:9 121:12 125:-9
squar	13:30
, put	36:51 39:14 50:16 62:41 63:-11 69:21 72:25 98:11 104:8
it in	1:-10 3:-9 33:10 36:37 39:15 42:10 72:-13 95:21 98:9 115:31 125:22
pop==ped	24:14 36:19 45:9
pop	24:25 36:19 45:9
^ pop	36:20
used the	0:-18 36:20 125:36
&#d#o@job@wire	36:36
:==	0:15 1:-17 3:13 4:-19 5:-14 6:-8 8:25 9:-17 11:-11 15:-8 16:10 17:-31 19:17 20:21 21:-9 22:-9 23:-13 24:-9 25:11 27:-13 28:-8 30:-18 32:-14 33:-8 37:-21 38:-15 39:12 41:12 43:-27 44:-12 45:41 47:-20 48:14 50:23 51:-10 52:58 56:33 62:29 64:-24 65:-18 66:40 67:21 70:11 73:43 74:16 75:16 76:33 77:24 78:-8 79:-10 81:-17 85:23 86:-9 88:25 92:-15 93:11 96:20 97:-18 98:14 103:33 104:-10 105:-13 106:-9 107:33 108:-10 111:8 113:-17 114:-15 117:-21 125:-48
:	0:15 1:-17 3:13 4:-19 5:-14 6:-8 8:25 9:-17 11:-11 15:-8 16:10 17:-31 19:17 20:21 21:-9 22:-9 23:-13 24:-9 25:11 27:-13 28:-8 30:-18 32:-14 33:-8 37:-21 38:-15 39:12 41:12 43:-27 44:-12 45:41 47:-20 48:14 50:23 51:-10 52:58 56:33 62:29 64:-24 65:-18 66:40 67:21 70:11 73:43 74:16 75:16 76:33 77:24 78:-8 79:-10 81:-17 85:23 86:-9 88:25 92:-15 93:11 96:20 97:-18 98:14 103:33 104:-10 105:-13 106:-9 107:33 108:-10 111:8 113:-17 114:-15 117:-21 125:-48
#n :	0:-15 3:-28 13:10 16:26 17:-11 18:20 33:-8 36:15 42:15 43:-18 45:33 52:11 65:-9 70:-14 72:11 73:39 74:-16 76:22 77:37 82:13 92:-13 93:9 95:-9 96:17 107:41 113:-10 114:-10 115:-12 125:-12
ago==	16:-13 38:18 43:8 44:33 45:36 70:15 71:-11 75:23 89:-9 95:17 96:13 97:11 99:-15 102:37 104:-19 108:37 115:-12 125:-13
)~",
R"~(#n an	36:14 44:9 97:15
yesterday==	0:-9 1:-10 13:-8 16:-10 17:-12 33:24 36:8 38:-9 39:24 40:44 41:-14 43:14 44:27 45:-13 50:20 66:17 71:14 72:15 73:11 75:-19 77:16 78:30 90:-12 95:27 97:15 107:-8 115:-10 116:14 119:9 125:17
put piec	33:32
^ piec	0:-11 3:-8 23:-9 33:-15 36:42 37:26 38:22 40:34 69:50 70:28 80:12 82:-13 92:-8 97:-9
that #n	36:33 52:-15 86:9 97:11 99:29 118:41
is ,	29:-9 30:9 36:37 49:8 65:8 87:17
, in	0:-10 10:-14 13:21 15:14 20:12 26:13 27:25 32:8 36:35 40:-9 54:11 98:14
in it	4:31 21:8 36:33 98:14 117:10 120:11
it goe	36:35
goe $	36:35
get piec	0:-16 1:11 36:31 37:-11
might==	1:17 15:-13 33:-13 36:-28 48:-11 58:16 85:9 119:-21 125:138
later==	36:-27 68:15 108:33 111:8 125:30
might	1:17 15:-13 33:-13 36:-28 48:-11 58:16 85:9 119:-21 125:138
later	36:-27 68:15 108:33 111:8 125:30
later $	36:-27 108:33 125:31
and wher	1:-11 10:12 16:22 17:-12 25:-12 29:13 33:15
did it	1:-11 5:9 20:14 33:10 80:10
tin :	39:21
: #d	0:-8 1:-12 3:26 39:19 41:53 42:-12 50:-9 66:45 67:24 68:-8 69:-13 76:38
^ into	79:14
, @wire	0:-19 1:-11 6:28 7:20 8:-18 9:-12 18:16 20:-9 21:39 22:49 23:-8 39:70 46:11 50:-12 66:-9 79:-11 85:-9
#d and	2:25 39:13 41:-13 42:-10 72:49 81:-9
mm ,	0:-12 3:20 39:36 41:-8 42:20 46:13 49:12 50:-17 55:9 69:16 76:-8 80:-8 85:10 92:-9 116:10
, drawer	72:9
drawer #n	1:-20 39:46 42:14 72:12 78:9 79:47 80:-12 82:9
toss==	39:18
"==	18:12 39:17 41:28 42:9 50:11 66:-12 80:31 85:11 89:-10
#p	16:-16 39:15 41:51 42:8 44:24 70:39 71:19 77:33 80:10 89:12 125:-11
#n #p	39:18 41:30 42:10 80:15 89:-10
"	18:12 39:17 41:28 42:9 50:11 66:-12 80:31 85:11 89:-10
#p "	39:18 41:30 42:10 80:15 89:-10
&#p	16:-16 39:16 41:52 42:8 44:24 70:19 71:20 77:33 80:11 89:12 125:-10
&#n#p@wire	39:18
, #c	16:-27 44:43 46:10 50:23 55:29 66:30 67:18 68:-11 85:16 116:-8
#c mm	1:-12 44:-10 46:11 49:16 50:-9 51:37 55:-11 66:22 67:-13 68:48 69:39 85:17 87:40 116:10
, goe	1:16 39:9 40:-8
left over	19:-10 20:28 39:8
end ,	27:17 38:24 39:14 41:21 44:-9 62:16 96:8 122:11
@wire :	8:16 20:12 33:13 50:11 66:11 68:17 69:25 88:33 116:-8
, into	39:21 42:13
tin pleas	39:13
#n across	39:8 85:11
, radius	39:8
drop a	39:18
another #n	0:-14 39:58 79:-13 93:10
a nip	39:16
nip #n	39:10
, tang	39:9 40:10 49:9 80:-8
i've a	1:12 49:8 79:10 80:-8
a spar	65:9
tin with	42:14 72:9
add the	98:8 120:20
, all	4:46 5:18 9:22 11:-9 12:-16 13:-13 14:-11 16:8 19:23 20:23 26:-9 29:48 31:15 44:8 45:26 70:13 71:-8 101:9 105:31
just==	1:-18 2:-9 4:-14 12:14 13:-8 14:-12 16:-13 17:32 25:9 27:9 33:-10 35:-9 36:11 43:39 44:26 50:26 55:-9 66:16 68:17 74:-9 97:27 107:16 111:8 121:12 124:75 125:-23
just	1:-18 2:-9 4:-14 12:14 13:-8 14:-12 16:-13 17:32 25:9 27:9 33:-10 35:-9 36:11 43:39 44:26 50:26 55:-9 66:16 68:17 74:-9 97:27 107:16 111:8 121:12 124:75 125:-23
^ just	17:34 44:32 68:15 125:-9
just press	44:22
pound==s	16:-10 44:17 55:26 85:24
, short	44:8 75:10
bar ,	16:-8 44:41 85:20 86:23
gaug==e	44:26 55:50 61:-10 101:-8 102:8 125:45
done ,	9:20 27:9 43:27 44:47 47:14 48:-10 75:10
gaug	44:26 55:50 61:-10 101:-8 102:8 125:45
the gaug	44:31 55:8 102:9 125:47
kn==	44:16
press with	16:-15 44:41 86:24 100:-8
kn	44:16
night==	14:-11 33:-10 44:16 48:9 125:49
night	14:-11 33:-10 44:16 48:9 125:49
last night	14:-11 33:-10 44:16 48:9 125:49
night $	14:-11 33:-10 44:16 125:49
squeez==ed	16:-9 44:32 110:10
squeez	2:-8 16:15 30:11 44:43 110:10
down again	44:29 118:9
the long	8:9 9:-15 44:13 70:12 82:-11 85:16 86:11 94:8 125:37
long bar	9:-8 44:20 85:15 86:19 125:37
#n done	13:-10 15:28 16:-9 40:19 43:19 44:8 71:24 114:33 125:-20
#t ,	52:-8 54:27 105:9 109:11 111:-11
lbs==	44:10
lbs	44:10
have not	66:-10 94:-11 107:-9 110:-12 125:104
not press	86:21
mark==	3:-16 4:9 16:26 43:16 83:17
and when	9:12 33:41
trebl ,	16:9 89:12
stick==ing	17:20 45:-15 89:73 91:-13 125:-15
stick up	17:20 45:-15 89:73 91:-13 125:-15
look sunk	89:58
look high	17:-10 89:38
, rock	75:-8 89:29
rock ,	17:-12 125:30
, nut	46:22
end held	89:13
held ,	23:49
, gap	3:11
the same	4:-12 6:63 13:90 16:-13 17:14 20:-16 43:-13 59:12 74:88 83:-14 89:21 109:15 113:-26 125:-8
no rock	82:-11 89:67 97:-9
at all	0:21 3:-8 5:9 9:-9 10:8 13:18 14:21 17:22 20:12 24:-31 25:-9 26:12 28:27 29:-14 33:8 35:10 37:-9 43:-15 45:-16 47:14 84:-8 89:29 110:12 111:-13 112:10 113:16 125:33
around #n	89:23
quick==	8:17 89:31
^ had	43:-8 45:17 72:51 78:11 108:41
had a	89:12
quick	8:17 89:31
a quick	89:22
quick look	8:17 89:31
, #r	2:28 4:50 20:35 48:-10 52:-19 54:27 71:31 109:12
last #n	4:20 45:-12 89:29 93:27 98:15 124:49 125:-13
hang==	6:9 16:-9 41:-19 77:-9 125:78
. .	16:-16 125:25
hang	6:9 16:-10 41:-19 77:-10 87:15 125:76
hang on	16:-9 41:-19 77:-9 125:78
on ,	16:-8 57:21 61:14 87:9 96:20 125:12
, not	16:-8 36:25 39:-10 50:13 77:9 79:33 90:9 111:18 115:17 116:-9 125:-10
not laid	16:-8 125:21
it #n	17:14 99:12 104:16
came back	45:46
back up	24:39 45:54
none==	29:10 93:17 119:10
had my	45:22
my #o	45:22
#o look	45:67 89:9 115:26
percent==	5:25 29:-12 45:17
percent	5:25 29:-12 45:17
#n percent	45:17
, fine	3:20
%==	45:32
sprang ,	45:26
%	45:32
#n %	45:32
: #n	17:-14 39:-16 42:8 45:14 50:49 52:23 54:-11 68:12 70:-13 71:22 72:15 75:13 80:12 82:-8 93:25 95:16 97:-10 99:17 115:18 116:13 117:-8 118:17
, noth	45:33 87:14 93:19 97:12
morn==ing	3:-13 11:37 26:23 28:-11 29:32 33:-8 41:14 43:14 50:13 53:28 71:11 74:8 75:-9 95:11 101:18 105:38 106:-10 110:21 115:17 117:16 125:-19
morn ,	45:13 50:16 53:9 87:10 110:25 115:13
all good	19:24 23:-8 45:14
lift==ed	1:-18 38:12 45:97 52:-8 84:32 112:47 125:-8
overnight==	45:34
lift	1:-18 17:-9 38:12 43:-9 45:92 52:-8 84:32 95:25 112:47 114:36 125:-10
#n lift	1:-17 45:104
overnight	45:34
springback==	24:30 45:65 93:-40
springback	24:30 45:65 93:-40
#n recheck	115:22
recheck :	115:22
, rest	117:20 118:-11
foot==	68:16 88:8
foot	68:16 88:8
#n metre	50:10 51:71 79:-12 116:-11 118:-9 121:20
each ,	50:17 116:-9
, are	50:10
lindwurm==	9:-36 10:-14 11:-9 22:-9 27:-30 29:-9 30:-8 31:-20 32:108 35:-8 39:-10 47:-8 50:45 66:-10 100:-10 106:-12 110:-8 116:56 117:56 118:42 119:97 120:-33 121:125 122:42 125:-21
lindwurm	9:-36 10:-14 11:-9 22:-9 27:-30 29:-9 30:-8 31:-20 32:108 35:-8 39:-10 47:-8 50:45 66:-10 100:-10 106:-12 110:-8 116:56 117:56 118:42 119:97 120:-33 121:125 122:42 125:-21
from lindwurm	32:-10 50:19 119:29 125:10
lindwurm supply	9:-15 32:12 50:16 121:35 122:24
euro==s	50:13
euro	50:13
#n euro	50:13
euro $	50:13
paid==	5:-10 8:-14 19:81 33:-8 39:-9 50:31
eur==	50:33 55:53
in ,	5:8 20:15 27:12 39:-8 46:10 50:22 66:-12 79:18 95:14 98:10
paid	5:-10 8:-14 19:81 33:-8 39:-9 50:31
, paid	5:-10 8:-13 19:64 39:-9 50:31
paid #d	39:-9 50:32
eur	50:33 55:53
eur $	50:33 55:53
well==	31:49 36:12 42:40 43:57 48:9 50:31 62:10 79:-9 94:-8 95:44 99:8 112:-9 113:-10 125:21
@wire as	31:8 50:37
well	31:49 36:12 42:40 43:57 48:9 50:31 62:10 79:-9 94:-8 95:44 99:8 112:-9 113:-10 125:21
as well	31:49 42:42 43:57 50:31 62:10 79:-8 95:45 112:-9 113:-10 125:21
well $	31:50 43:62 50:36 62:10 112:-9 113:-8 125:23
#n "	50:12 66:-11 80:16 85:11
ferro==	5:8 8:-14 10:-11 11:-10 19:29 27:-22 29:-22 31:-14 32:116 33:-14 35:-8 39:-10 50:38 55:-11 57:-8 66:-18 79:-8 100:-22 116:32 118:-10 119:11 120:-21 121:114 122:110 125:11
daughter==s	50:16 55:-20 116:15 121:39 122:15
m==	0:-8 1:-11 8:-13 39:-15 50:12 51:65 66:38 68:16 69:83 79:-10 88:-14 120:18 125:-10
apiec==e	50:32
ferro	5:8 8:-14 10:-11 11:-10 19:29 27:-22 29:-22 31:-14 32:116 33:-14 35:-8 39:-10 50:38 55:-11 57:-8 66:-18 79:-8 100:-22 116:32 118:-10 119:11 120:-21 121:114 122:110 125:11
^ ferro	27:-14 32:22 50:22 100:-8 121:57 122:37
ferro and	32:8 50:16 116:15 121:11 122:17
daughter	50:16 55:-20 116:15 121:39 122:15
and daughter	32:8 50:16 116:15 121:11 122:17
m	0:-8 1:-11 8:-13 39:-15 50:12 51:65 66:38 68:16 69:83 79:-10 88:-14 120:18 125:-10
#d m	1:-9 8:-10 39:-12 50:12 51:14 66:55 69:51 88:-11
apiec	50:32
m apiec	50:28
apiec $	50:27
into stock	50:46
#n m	51:51 66:-18 68:22 69:33 79:-9 120:18
m ,	116:12
fewer==	2:15 66:11
#n so	17:9 33:14
so i	36:13 64:24 97:10 107:16 108:9 110:9 111:16 112:-8 125:16
i make	16:12
fewer	2:15 66:11
shift them	2:18 41:-10
)~",
R"~(move them	2:29 5:-8
them up	2:17 14:11
fill==ed	2:9 36:27 70:-11 82:25
shift plan	2:30
, empty	2:9 67:10
empty slot	1:-8 2:9 13:52
fill	2:9 13:12 36:26 70:-11 82:25
hair==	69:14 73:11
mak==ing	0:46 2:16 22:-9 39:-15 60:38 104:12
hair	69:14 73:11
a hair	69:14 73:11
short ,	2:22 5:-8 39:10 42:17 125:15
- lay	2:69
mak	0:46 2:16 22:-9 39:-15 60:38 104:12
mak new	0:-8 2:17
new one	0:-8 2:27 5:-8
, ok	30:31
, will	3:18 73:10 108:30 114:30 125:-9
^ dress	25:-13 55:32 103:45
, good	55:11
#n side	3:28 37:28 83:25
side only	3:21
leav it	3:11 108:17
position==s	0:-10 2:28 4:63
position	0:10 2:28 3:17 4:62 37:-8 41:-10
slot position	0:-8 4:52
tabl ,	0:-8 4:26 16:8 17:28 98:24
least==	0:-9 1:33 5:47 42:19 55:23 81:9 120:16 121:14
@wire so	5:10 24:14
least	0:-9 1:33 5:47 42:19 55:23 81:9 120:16 121:14
tin get	5:11 39:10
with @wire	5:11
, no	5:9 89:17 97:-9 98:14 99:-9 121:16
no new	5:10 125:27
we did	5:10 75:8 95:23 125:-11
it today	0:-9 5:10 101:14
list ,	6:20 10:16 35:31 69:11 121:-8
saw==	5:8 16:-11 74:23 98:11 103:20 125:19
am at	107:10
saw	16:-12 70:41 71:13 74:52 82:-13 98:11 103:20 125:19
the saw	16:-9 74:25 125:22
saw ,	4:8 98:11
, cut	0:12 5:26 20:22 43:-8 60:13 107:30 108:-12
@wire cut	6:19 68:11
to hang	6:9
label in	7:27
mm step	7:17
step $	7:22 27:16 30:-13 67:9 68:-9
bin ,	40:22 42:-9
sticker==s	7:39
sticker	7:39
sticker for	7:39
drawer of	7:18
, by	7:16 19:19 30:44 47:-11 66:17
got open	8:-16 12:53
her==	4:-8 12:29 29:-10 30:8 36:-8 37:10 47:24 48:42 57:12 58:36 59:17 60:-8 62:17 91:9 106:11 109:-22 110:12 113:18 125:-12
her	4:-8 12:29 13:-8 29:-10 30:8 36:-8 37:10 47:23 48:32 57:12 58:35 59:13 62:17 91:9 109:-22 110:10 113:15 125:22
on her	12:30 29:-14 47:16 48:20
plat $	12:30 29:-13 125:12
window==	12:35 17:8 58:12 61:29 64:39 79:8 80:11
window	12:35 17:8 58:12 61:29 64:39 79:8 80:11
the window	12:29 17:10 58:17 61:18 72:8 79:8 80:11
window bench	12:28 58:13 61:29 64:39 103:-11
door==	12:32 14:-11 53:10 58:34 61:40 64:50 67:10 103:-17
door	12:32 14:-11 32:-10 53:10 54:17 58:34 61:40 64:49 67:10 103:-17 122:12 125:-9
the door	12:33 14:-11 53:11 54:18 58:17 61:32 64:53 103:-14 125:-8
door bench	12:32 14:-11 58:34 61:40 64:50 103:-17
neck==s	9:-9 12:67 98:28
neck are	9:-9 12:67
are wait	11:-10 12:39 118:20
left the	5:8 14:16 62:32
so far	14:17 17:10 21:16 33:11
far $	5:20 13:29 14:17 16:-14 21:15 33:10 77:26
^ peopl	14:88
build==ing	15:14
#d "	18:12 92:9
deep on	18:24 74:-13
seat==	96:8 107:23 125:16
curv==ed	16:-9 18:11 74:29
doe its	18:29
its wire	16:11 18:28 73:16
wire fit	18:29
it too	18:24 77:27
we had	19:24 62:11 112:13
had $	19:16
record==	0:-23 3:10 4:19 17:10 19:31 36:14 41:9 42:-8 43:-13 58:13 62:17 68:10 73:14 93:16 96:15 107:18 109:10 116:11
all delivery	19:42
record	3:9 4:17 19:30 24:12 29:-10 33:13 36:14 41:8 42:-9 43:-14 58:13 62:17 66:-8 68:10 69:9 73:14 93:15 96:15 99:16 107:18 109:10 116:10
on record	0:-19 4:24 17:20 19:31
when did	19:56 31:-40 33:15
height==s	19:13
wire delivery	9:-12 19:63
october==	20:58
wire balanc	20:59
for october	20:9
this month	8:-12 20:48 33:21
add up	9:-8 20:45
up this	20:13 117:8
becam==e	20:11 33:10 70:-20 82:20
november==	8:-12 11:17 20:77 21:50 33:15 45:-13 115:23
becam	20:11 33:10 70:-20 82:20
between the	11:18 20:11 47:-8 90:17
of november	20:15 21:27 33:26
&#c#o@wire	20:11
saving from	21:32
tin this	21:17
september==	5:-9 20:41 21:29
^ money	21:19
#n november	11:23 20:19 45:-10 115:24
bother==	42:-8 51:29 81:19 125:-18
bother	42:-8 51:29 81:19 125:-18
dead==	8:-29 22:68 57:17 94:11
dead	8:-29 22:68 57:17 94:11
use to	1:-9 22:8 39:9 81:10
anybody $	22:8 23:24 65:17
idle for	22:26
not scrap	22:23
@wire too	22:8 120:10
short to	22:23 42:-8 81:19
be any	1:11 11:10 22:12
spoken==	8:-12 23:68 31:-11
spoken	8:-12 23:68 31:-11
spoken for	8:-12 23:68 31:-11
hold piec	1:-11 23:37 36:-19 37:-10 38:26 40:-15 125:49
for anybody	23:24 65:17
spring==ing	24:18
back ,	23:13 24:24 35:10
, per	24:11
at what	19:9 24:15 26:8
sander==s	8:-19 25:48 99:55 101:11 102:31 125:39
sander have	25:15 101:17
book what	26:22
press booking	26:36
is got	12:9 14:-12 15:9 26:39 28:-9 94:10
a book	26:61
the step	27:53
long for	27:24
just #n	27:14 111:10
and on	15:13 23:14 27:24
board ,	4:8 10:-13 27:28 30:31 57:17 58:-10 89:-9 90:48 97:10 107:12
^ till	28:55 29:-18
till when	9:25 28:38 29:-28 31:25
christma==s	28:32 53:16 108:-8
christma	28:32 53:16 108:-8
on christma	28:34 53:18 112:-9
christma day	28:34 53:18 112:-9
do #n	27:10 30:10 52:15
december==	0:-15 1:-8 11:27 12:-11 13:-12 16:-13 17:-9 23:-8 26:10 28:77 30:90 33:-17 38:-11 44:-8 45:-15 47:71 50:-12 52:-15 53:51 54:22 61:-9 64:-9 75:-12 89:-14 90:-9 95:-9 97:-12 99:-9 101:23 107:-9 109:-15 110:83 111:23 112:86 115:10 117:-9 118:45 119:-10
#n december	11:-8 13:-11 28:64 29:17 30:23 38:-9 50:-12 52:-14 53:66 64:-8 75:-10 89:-9 101:16 105:9 109:-12 110:53 111:14 112:70 117:-13 118:44 125:9
december ,	26:15 29:29 30:14 47:-17 53:52 54:13 101:12 105:11
only ,	3:9 17:36
@day ,	11:19 29:-10 33:22 45:-8 46:-9 52:34 53:9 61:9 75:-8 105:12 106:34 111:15 115:13 118:8 125:25
, can	1:-9 2:9 3:10 5:-9 124:14
and by	11:-15 29:15 30:52 33:14 47:-13
report==	11:38 13:17 16:-17 20:-8 21:24 35:33 61:11 102:12 124:42 125:-9
@person report	33:44
did piec	1:-18 33:45
i report	16:-17 33:16 35:37
keep piec	36:-11 37:53 125:-8
by for	11:-17 23:45 37:55 73:-10 83:18 84:14
^ save	36:-17 37:51
more ,	36:-10 38:-8 42:19 48:9 53:-12 57:22 60:11 77:8 84:15 86:8 100:-10 104:-13 109:9 112:17 113:9 125:35
, free	84:16
free piec	1:-9 125:25
releas the	38:47 73:-10 84:51
chang==ed	30:10 38:31 48:26 65:-9 101:9
mind ,	38:31 48:26 65:-9
, let	31:10 38:28 52:22 65:13 84:12 111:-8
let it	38:28 84:9 125:13
everyon==e	38:37
back to	38:46 63:19 83:-11 84:17 113:10 118:12
everyon	38:37
not let	38:-20 84:-24 125:59
bin piec	40:35
, too	40:36 42:-18 81:16
, kink	40:34 77:34
mic'd==	41:42 42:-11 88:9
mic'd	41:42 42:-11 88:9
^ mic'd	41:42 42:-11 88:9
caliper==	41:46 76:12 89:-10
caliper	41:76 76:11 89:-10 92:-13
the caliper	41:76 76:11 89:-10 92:-13
&#n#p	41:30 71:21 80:16 89:-10
caliper $	41:47 89:-9
, bent	41:15 42:12 44:-9
, an	41:10 70:11
, measur	3:11 42:-10 75:32 76:14 87:10
tenth==s	42:17
tenth	42:17
in drawer	1:-9 39:24 42:15 78:10 82:9
up short	42:15
short :	41:-8 42:29
" ,	42:11
, end	1:9 3:20 42:13
&#n#o#p	42:11
millimetr==e	7:12 41:-11 42:40 55:33 74:16 92:25 125:-8
millimetr	7:12 41:-11 42:40 55:33 74:16 92:25 125:-8
a millimetr	41:-11 42:40 55:33 92:25
clean==ed	4:-38 13:-11 22:11 43:104 74:-9 77:19 107:-9
polish==ing	27:61 43:21 98:13 103:29 104:-12 108:34
it can	43:31 91:9 101:11 113:19
can go	38:22 40:-12 43:31 57:13 81:26 87:10
dress on	27:13 43:15 103:27 107:19
between #n	43:45 45:-9 54:20 72:-25 82:-13 89:32 101:15 111:14
not tru	65:27 125:8
edda==	13:-8 46:51
edda	13:-8 46:51
#c ,	21:9 44:-8 59:22 85:24
nut #n	46:22
, scal	46:17 67:9
, wire	46:12 72:19 116:10
january==	47:17 53:18 110:29
, due	46:12 116:17
due #n	55:12 116:18
#n january	53:18 110:29
january #c	111:17
&#c#n@job@wire	46:19 76:-8
#c to	59:10 87:9
greta==	121:11
greta	121:11
, only	1:-9 7:11 11:11 39:14 97:12
do ,	55:10 61:12
, take	48:20 57:15 65:-11 86:27 100:29 122:25
job ,	12:16 13:-15 23:8 33:-8 46:51 48:22 94:-9 104:11
now promis	11:-10 47:17 118:17
to go	14:8 27:35 47:19
go out	14:8 47:19
now #d	47:18
#d .	1:-9 39:25 47:18 53:34 56:21
. #c	47:18 53:34
^ leav	13:-8 64:16 114:28 115:16 125:37
as it	125:39
earlier==	28:-8 29:-12 30:54 111:22 125:-27
earlier	28:-8 29:-12 30:54 111:22 125:-27
chang her	48:26 61:14 65:-9
crack==ed	40:11 48:20 86:12 94:-8
queu ,	48:20
, neck	94:16
crack	40:11 48:20 86:12 94:-8
crack $	40:11
pick==ed	48:19 65:-17 83:10 96:15 107:45
his==	4:8 13:9 18:12 23:12 29:-11 30:10 48:25 58:8 107:15 109:8 125:33
pick	0:9 48:19 65:-9 83:10 96:15 107:45
his	4:8 13:9 18:12 23:12 29:-11 30:10 48:25 58:8 107:15 109:8 125:33
his @job	4:10 13:-8 15:8 23:12 26:8 29:-9 48:16 125:36
again ,	8:16 16:-9 45:49 48:18 63:46 95:19 102:18 103:8 104:9 115:-8 118:8
, cancel	48:20 124:11
cancel==s	1:-9 125:60
if @job	1:-9 125:60
@job cancel	1:-9 125:60
)~",
R"~(, tell	14:16 25:13 125:13
jumbo==	24:13
jumbo	24:13
wire jumbo	24:13
, crown	19:12 49:35 50:16 85:-9 88:-15 117:20
wide ,	18:9 49:9 85:28
high ,	17:-8 45:18
, stick	8:10 49:41 50:12
stainless==	8:35 12:-8 49:23
steel==	16:-10 17:18 49:23
stainless	8:35 12:-8 49:23
steel	16:-10 17:18 49:23
steel ,	49:23
gold==	49:23
ft==	49:23 51:8 69:21
gold	49:23
ft	49:23 51:8 69:21
#n ft	49:23 51:8 69:21
ft $	49:23 51:9
vintag==e	49:10
new kind	49:17 80:-8
wire ,	0:-8 5:41 7:15 9:-29 19:8 20:-12 23:31 28:-16 29:-10 31:38 33:9 39:74 41:-8 72:-10 78:24 80:-11 120:9
vintag	49:10
" $	80:16
pick==	0:10 65:9
metre $	51:30 121:21
m $	51:73 66:-9 69:-10 120:10
warn==	51:9
warn	51:9
@wire drop	51:18
drop under	51:28
metre down	51:22
@wire reorder	51:13
noon==	16:-9 52:13 101:17 105:15 109:9 110:-8 115:14
noon	16:-9 52:13 101:17 105:15 109:9 110:-8 115:14
to noon	16:-9 52:13 105:16 109:11 111:-8
more @day	52:47 53:-15
, clos	52:24 53:13
weekly==	52:38 54:-11 109:-8
weekly	52:38 54:-11 109:-8
weekly hour	52:15 54:-8
hour @day	52:18 109:-8
every week	29:-8 52:30 53:-8 109:37 110:-12
stocktak==ing	50:-16 53:32 66:21
stocktak $	53:32
shut $	53:41
clos==ing	28:-9 52:-9 53:-25 54:-12 112:38 125:89
pm==	54:10
this @day	52:-39 54:53 109:-32 111:51 125:39
pm	54:10
#n pm	54:10
shift on	2:-8 54:10 75:35
#r ,	2:20 4:43 48:-10 71:31 75:14 89:-10 97:16 105:17
, #t	45:-10 52:-22 54:35 109:18 115:22
#t -	52:28 54:17 105:15 109:13 111:10
- #t	52:28 54:17 105:15 109:13 111:10
@day too	52:-10 54:34
too ,	31:18 52:-10 54:34 61:12 98:20 120:10
to #t	28:-9 52:23 54:24 105:16 109:-13 111:28
trim==	0:17 29:-10 35:55 55:34 125:18
limit==	0:16 13:-11 16:60 17:-15 29:-10 35:54 51:22 55:34 99:17 125:16
trim	0:17 29:-10 35:55 55:34 125:18
the trim	0:17 29:-10 35:55 55:34 125:18
limit	0:16 13:-11 16:60 17:-15 29:-10 35:54 51:22 55:34 99:17 125:16
trim limit	0:17 29:-10 35:55 55:34 125:18
limit to	55:38
length are	55:34 81:17
setback==	55:30
setback	55:30
cost==s	10:12 55:11
loss==	55:66
, set	23:24 55:24
loss	55:66
to that	55:11 112:9
chang the	52:18 55:26 118:19 120:-11 121:11 125:12
make the	0:24 55:35 113:10
bin step	7:-11 55:54
europ==e	55:36
/==	39:8 55:31 56:107 58:-10
vienna==	55:22
europ	55:36
/	39:8 55:31 56:107 58:-10
europ /	55:36
vienna	55:22
/ vienna	55:22
vienna $	55:22
than==	1:-10 8:-12 9:-9 32:25 41:-18 55:24 69:43 70:-10 71:11 92:37 120:9 125:73
^ never	55:10 125:64
than	1:-10 8:-12 9:-9 32:25 41:-18 55:24 69:43 70:-10 71:11 92:37 120:9 125:73
more than	55:11 61:12 69:18
set that	55:23
limit $	0:17 29:-9 35:59
bell==	57:27
http==	56:22
ring==	9:10 32:10
bell	57:27
receiver bell	57:27
http	56:36
http :	56:36
: /	56:36
/ /	56:36
/ #d	39:8 56:21 80:8
. #t	56:22
#t /	56:22
&#d#t	56:20
log==	33:130 39:13
e==	29:10
log	33:130 39:13 59:10
e	29:10
send==ing	57:35
wall==	57:33
stop send	57:35
wall	57:33
the wall	57:31
lamp==	56:22 57:41 100:-13 115:18
receiver call	57:12
lamp	56:22 57:41 100:-13 115:18
call lamp	57:26
jelka==	58:18
jelka	58:18
rok==	46:10 58:12 85:-8
he==	12:-8 15:9 29:-12 32:16 47:31 48:-11 58:39 59:26 62:11 63:12 64:17 98:-9 107:16 109:-9 111:15
rok	46:10 58:12 85:-8
start today	58:22
today ,	1:9 33:23 44:-9 58:31 105:10 125:46
he	12:-8 15:9 29:-12 32:16 47:31 48:-11 58:39 59:26 62:11 63:12 64:17 98:-9 107:16 109:-9 111:15
, he	47:23 58:32 59:13 62:12 63:14 64:17 107:16
milka==	58:11
she==	3:22 33:8 42:-10 47:11 58:36 63:36 106:17 109:-16 110:9 111:16 125:11
milka	58:11
she	3:22 33:8 42:-10 47:11 58:36 63:36 106:17 109:-16 110:9 111:16 125:11
, she	58:24 110:8 125:26
may only	58:33 61:17
only look	58:33 61:17
janez==	58:36
join==s	58:36
janez	58:36
join	58:51 98:-8
as a	6:9 16:8 17:10 58:38 62:-8 63:15 100:45 103:-9 115:14 120:8 122:13
colleagu==e	12:17 58:34 60:-17
pia==	58:34 60:-17
colleagu	12:17 58:34 60:-17
new colleagu	58:34 60:-17
pia	58:34 60:-17
, uid	58:38 60:-19
and #c	59:14
off @person	59:-17 60:26 65:8
login==	60:33
not @person	59:-8 60:38 65:16
login	60:33
@person login	60:21
any longer	38:32 60:24 65:24 81:13 100:32 125:-30
longer $	38:33 60:24 65:24 100:32 125:-22
mov==ing	61:13 64:-10
@person mov	61:23 64:-11
over to	61:23 75:10
odila==	61:27
@person call	100:9 110:38
odila	61:27
sav==ing	40:11 61:18 103:21 118:10
@person may	61:15 110:-12 125:31
@person back	63:56
with us	63:47 118:10
bring==	21:13 63:22
bring	21:13 63:22
rejoin==ed	61:-10 62:-10 63:69
crew==	61:-8 63:47
rejoin	61:-10 62:-10 63:69
rejoin the	61:-9 62:-8 63:58
crew	61:-8 63:47
will do	64:51 114:-9 119:15 125:15
snow==ed	64:23
snow	64:23
, @person	12:16 15:-12 28:-9 33:-15 64:18 99:11 111:37 125:30
give==s	30:18 65:21 120:20
whoever==	49:11 65:43 91:10 104:10
whoever	49:11 65:43 91:10 104:10
, whoever	65:35
whoever has	60:9 65:41
take @person	63:24 65:13 106:11
@person off	28:-22 65:14 109:-12 125:55
let anyon	38:-16 65:68
do it	29:13 30:19 65:39 103:9 125:-20
up job	65:48
unassign==	13:-18 65:120 114:-8 125:-10
unassign	13:-18 65:120 114:-8 125:-10
not do	65:26 125:-8
all ,	10:12 48:19 65:12 72:9 87:18 112:17 125:-11
, nobody	53:25 60:10 65:11 86:11
count the	8:13 9:-9 66:23 125:12
- take	66:13 121:16
m of	50:-8 51:10 66:19 68:13 69:13
by my	50:-8 66:17
my count	50:-8 66:17
altogether==	8:29 50:13 62:10 66:13 67:9 68:-9 100:8 106:15
i count	66:36
#d metre	66:31
altogether	8:29 50:13 62:10 66:13 67:9 68:-9 100:8 106:15
altogether $	8:30 50:14 66:14
it say	1:-11 8:14 9:-11 40:-8 50:16 67:-13 69:34 125:18
gram==s	1:-8 39:-8 50:-15 67:52 68:63
coil ,	12:8 50:-19 67:32 125:10
gram ,	68:16
empty spool	50:27 67:-14
g==	1:-8 20:-10 39:-11 50:27 51:-11 66:-24 67:79 68:83 69:-9 120:9
scal :	67:34
#d g	39:-9 50:-18 66:-10 67:12 68:77
kg==	67:16 120:11 121:10
weigh #d	67:15 68:33
kg	67:16 120:11 121:10
#d kg	67:16
g ,	50:13 120:10 125:11
not on	67:13
oz==	50:-28 67:57 116:-8
oz	50:-28 67:57 116:-8
#n oz	50:-28 67:57 116:-8
#n cm	68:20
: #c	44:-9 67:8 85:27
really==	27:-15 32:42 40:-11 69:49 85:10
really	27:-15 32:42 40:-11 69:49 85:10
really #d	40:-11 69:50
, correct	69:35
correct it	69:10 125:28
metr==e	51:27 68:14 69:16 125:-19
half a	42:11 55:33 61:12 68:9 69:16
metr	51:27 68:14 69:16 125:-19
a metr	51:28 69:17 125:-19
turn up	31:22
behind the	69:17 77:10
correct piec	69:8
was off	13:12 28:11
becaus the	19:9 48:32 117:-10 119:14 125:-14
remeasur==ed	69:22
hand should	69:26
should say	69:26
becaus i	69:22 110:16 125:-8
remeasur	69:22
of piec	0:-9 1:24 33:-11 36:22 40:18 69:10 70:-10 82:-10 125:18
came off	70:22 71:22
#n made	70:25 78:12
made #n	70:25 78:13
cut ,	4:14 5:44 6:9 12:-14 14:16 20:21 70:12 71:-8
all from	5:-8 70:14 73:11
a fresh	71:14
old @wire	72:13
fret out	72:11
they'r==e	2:13 23:24 53:9 72:9 81:29 95:12 101:13 118:9 125:-10
sill==	72:8 79:9 80:11
they'r	2:13 23:24 53:9 72:9 81:29 95:12 101:13 118:9 125:-10
, they'r	72:8 81:30 95:12
sill	72:8 79:9 80:11
window sill	72:8 79:9
sill $	72:8
is from	4:9 103:15 109:11
lot for	37:-10 73:47 84:19
saw==ed	18:-8 70:45 71:17 74:29 82:-12
^ saw	70:34 74:9
saw the	74:13
deep ,	18:32 74:10
same $	13:-20 74:91
mov #n	70:-14 71:-8 75:57
mov the	75:30
down to	51:9 55:23 75:29
not move	89:10 125:12
anyth on	96:-8 125:58
across at	41:-16 76:33
quarter==s	76:18
@job an	70:14 76:18
#o ,	17:10 33:8 46:13 76:21 85:-8 114:14
@job board	3:10 41:-13 74:11 76:10 87:37 91:26 107:10 108:20
bag==	43:-8 77:24 83:18
the dust	77:24
bag	43:-8 77:24 83:18
dust bag	77:24
spoilt ,	77:44 86:14
, fil	27:11 77:35 103:10
right through	48:12 77:35
old #n	39:-8 78:46
remak==e	125:17
remak	125:17
not measur	39:-13 72:10 79:36 125:13
unmeasur==ed	22:-9 39:-17 79:71
^ about	22:-8 35:23 79:19
#n bit	22:-8 79:30 82:8
unmeasur	22:-9 39:-17 79:71
unmeasur $	22:-8 79:21
handful :	80:18
^ went	45:20 80:12
went through	66:11 80:12
handful measure	80:20
^ length	4:26 80:11
^ both	40:-10 70:11 81:20 82:14 101:16 102:8
both #d	40:-10 81:21 82:37
, scrap	5:-8 20:23
s for	125:8
not take	23:18 104:15 109:10
we set	23:34 83:-18
give free	84:18
reservation==s	23:44 26:70 29:-9 84:46 101:-17
forget about	84:14 86:9
reservation	23:43 25:-11 26:92 29:-9 36:-12 38:45 40:-16 45:-8 84:46 101:-19 106:71 125:-13
)~",
R"~(the hold	23:48 38:39 43:-10 69:11 84:41
hold on	1:-11 37:16 38:23 43:-10 84:45
length #c	49:10
, width	85:21
, length	4:52 41:-8 79:26 85:18
, rat	85:14
bar crack	86:12
crack ,	86:12
it out	1:14 86:9 100:8 125:-9
of use	86:21
bar any	86:21
call short	86:20
cradl ,	87:19
, head	87:16
clear ,	87:16
, glue	87:16
start at	29:-9 43:42 87:28 107:-21 111:33
nut off	87:85 108:-15
beyond #c	87:21
^ hollow	87:9
from #c	87:19
: crown	88:38
^ over	88:10 89:12
see==	1:-9 3:9 4:8 5:-9 8:10 16:14 19:9 26:25 31:9 35:27 90:26 105:-9 115:10
see	1:-9 3:9 4:8 5:-9 8:10 16:14 19:9 26:25 31:9 35:27 90:26 105:-9 115:10
can see	1:-8 3:10 90:27
see light	90:17
and under	90:52
bottom==ing	91:13
deepen==ing	91:22
deepen	91:22
^ feeler	92:19
feeler say	92:19
stop==s	93:22
good ,	93:12 100:10
, last	9:23 21:12 93:12
^ back	24:-9 94:22 107:79
neck on	94:42
whether==	0:9 3:9 18:18 90:-15 94:-11 125:41
not look	81:13 90:-14 94:-11 125:42
whether	0:9 3:9 18:18 90:-15 94:-11 125:41
look whether	90:-14 94:-11 125:43
reseat #n	95:67
seat anew	95:30
glu #n	96:31
, at	1:9 10:11 20:15 36:13 42:52 58:8 76:-8
past #n	36:9 43:8 54:11 70:-8 93:38 107:16 111:15
clamp==	96:74
a clamp	96:41
clamp on	96:40
glue #n	125:39
file==	3:10 4:11 16:17 97:18
levell #n	75:-9 97:66 125:12
spot==	49:8 57:14 80:-8 97:29
spot	49:8 57:14 80:-8 97:29
we'v==e	2:8 36:17 62:22 67:14 68:-9 85:9 98:31 99:39 100:41 103:-8 125:-11
buffer==	98:17 100:12
we'v	2:8 36:17 62:22 67:14 68:-9 85:9 98:31 99:39 100:41 103:-8 125:-11
^ we'v	36:17 62:23 85:9 98:34 99:12 100:41 103:-8
we'v got	67:15 68:-8 98:36
buffer	98:24 100:12
now ,	2:-9 10:-10 11:17 35:15 39:-10 43:18 44:12 49:9 50:12 61:15 72:-12 78:20 80:9 84:12 98:21 105:-9 107:-10 108:26 109:34 122:13 124:-8
buffer $	98:17
bandsaw==	98:21
bandsaw	98:64 100:23
bender==	98:29 99:-8
bender	98:29 99:-8
them ,	2:-12 71:8 72:29 79:9 81:10 99:-8 121:15
spray==	98:15 100:20
booth==	100:20 110:10
spray	98:15 100:20
the spray	100:20
booth	100:20 110:10
spray booth	100:20
booth as	100:20
machin ,	26:10 100:28
, count	39:-8 50:12 66:13 98:9 116:12 117:12
drill==	98:33 99:-10 100:39
drill	98:33 99:-10 100:39
drill press	98:26 99:-8 100:30
, call	69:14 85:15
drill ,	100:10
, new	27:8 47:36 78:17
oven==	98:17
oven	98:17
machin oven	98:17
oven ,	98:17
, setup	99:12
we'v #n	99:45
bench==es	14:33 99:130 100:13 102:30
sold==	48:34 57:-8 60:9 100:76 120:10
sold	48:34 57:-8 60:9 100:76 120:10
it off	23:13 57:14 86:22 87:10
rid==	57:13 81:11 86:10 100:11
^ get	81:12 86:10 100:11
rid	57:13 81:11 86:10 100:11
get rid	57:13 81:11 86:10 100:11
rid of	57:13 81:11 86:10 100:11
, we	28:-8 38:-10 48:28 52:9 66:10 86:13 98:15 100:25 112:13 115:16 125:-12
not have	2:9 5:-8 38:25 100:26 103:10 114:19 125:-29
that machin	100:29
machin now	59:14 100:11
@day noon	101:17 115:14
noon $	101:17 115:14
broken $	25:21 48:26 86:16 94:-8 99:-10 101:61 102:-9
leak==s	25:-12 101:33
leak	25:-12 101:33
, press	25:-14 35:23 44:8 101:19
servic==ed	101:13
, out	20:15 101:22
@day #t	54:17 101:21 105:16 111:-10 115:23
belt==	42:20 99:24 101:15 103:-12
torn==	40:10
torn	40:10
afternoon==	6:9 8:-8 11:14 26:13 29:26 33:-10 40:20 43:21 46:-8 52:-15 53:24 54:18 70:-9 105:28 109:-12 110:62 112:-8
afternoon ,	46:-8 52:-9 53:10 54:20 105:12 110:10
down until	101:9 125:36
until #t	54:13
fix==ed	8:41 9:-17 52:22 96:10 102:22 111:-8
fix	8:40 9:-17 14:11 17:10 25:-8 49:11 52:22 96:10 101:-8 102:20 107:14 111:-12 120:8 125:22
^ fix	102:22 107:15
fix the	25:-8 102:20 125:23
fil==ing	2:9 25:-12 103:59 108:30
the bench	1:15 25:11 64:-8 77:9 99:25 102:32 103:56 125:12
bench ,	6:27 12:21 58:-16 61:30 99:29 100:17 103:15
not the	11:9 12:9 14:-9 36:25 103:8 125:-12
crown==ing	43:22 55:-14 98:13 99:-13 103:45 104:42
seat==ing	27:32 32:-16 43:13 63:-13 103:62 104:34 107:40
hour and	104:15 108:19
press @day	16:-11 101:-11 105:57 106:30 125:-8
, @day	29:36 118:15
to half	68:10 105:13
half past	36:9 43:9 54:11 70:-8 105:8 107:17 111:15
&#t@day@person	29:22 52:-27 105:18 109:22 111:15
dec==	16:-10 47:35 53:13 105:16 112:21 116:18
dec	16:-10 47:35 53:13 105:16 112:21 116:18
#n dec	16:-10 47:36 105:16 116:18
, for	0:-12 1:-9 4:10 5:-8 6:24 10:24 11:22 13:-8 16:-26 17:-9 19:-8 20:16 23:-8 37:87 46:-8 47:-9 50:14 70:18 75:8 82:-12 105:23
it ,	0:19 3:-15 17:-10 27:11 30:15 32:8 40:14 47:-8 50:14 57:13 59:14 78:20 83:8 89:-10 92:12 93:10 97:11 100:9 101:-9 106:23 125:-15
, tru	104:9 107:16
speak==	43:-9 76:10 107:32
as we	43:-9 51:11 99:21 107:31 121:15
speak	43:-9 76:10 107:32
, stop	108:41
to leav	108:42
phon==e	13:-33 17:-9 47:11 57:13 89:10 108:37 125:69
phon	13:-33 17:-9 47:11 57:13 89:10 108:37 125:69
phon ,	108:21
, i've	1:9 33:24 36:14 108:21
minute ago	43:14 44:8 45:24 71:-9 75:28 96:16 99:-12 102:24 104:-12 108:41 115:-10
off tomorrow	108:-18 125:47
@person gone	62:8 110:30 111:-12
@person ill	28:-16 29:-11 61:-10 62:-13 63:-12 110:55 125:61
#t only	111:15
#n urgent	13:51 17:-9 29:-10 113:36
gig==	53:12 113:11
gig	53:12 113:11
gig ,	53:14 112:-10 113:11
, her	58:12 110:10 113:11
her @job	29:12 47:10 48:18 113:22
once==	1:-8 13:-8 16:31 25:15 30:-22 43:-14 51:19 62:-15 63:35 69:19 75:8 99:-9 102:54 114:34 125:51
once	1:-8 13:-8 16:31 25:15 30:-22 43:-14 51:19 62:-15 63:35 69:19 75:8 99:-9 102:54 114:34 125:51
@job wait	114:21
after lunch	44:-14 107:-9 115:18 125:46
oop==s	124:33
scrub==	119:15 124:32
oop	124:33
scrub	119:15 124:32
scrub that	119:15 124:32
that last	93:-10 124:66
, undo	124:54 125:-8
wrong ,	13:-9 17:23 69:19
thes==e	11:-8 12:16 28:16 29:-12 65:16 103:18
thes	11:-8 12:16 28:16 29:-12 65:16 103:18
sander thes	103:18
thes day	12:16 103:18
, level	17:38
push==	2:8 11:-11 16:8 24:19 47:29 85:13
push the	2:12 11:-9 24:14 47:13 75:10
down #d	41:14 82:-10 92:60
scratch==	26:-9 48:12 87:37 94:-8 106:46 124:8
scratch	26:-9 48:12 87:37 94:-8 106:46 124:8
^ scratch	26:-8 87:37 106:34 124:8
scratch @person	26:-8 106:35
@person press	26:-8 106:35
neck ,	94:10
ground==	42:12 85:17
ground	42:12 85:17 110:20
down ,	42:-8 85:17 89:8 108:33
log==s	59:11
user==	59:67 60:28
@person log	59:11
log in	59:11
user	59:67 60:28
user #c	59:32 60:22
^ whoever	91:10 104:11
, that	3:14 5:16 16:-13 42:-10 43:9 44:10 53:12 55:9 61:10 70:10 71:11 75:-12 91:23
@job sold	48:38
sold the	48:37 100:25
doing it	15:10 29:-9 48:28
strik==e	25:-10 47:15 48:12 57:24 86:8 100:45
strik	25:-10 47:15 48:12 57:24 86:8 100:45
^ strik	25:-10 48:21 100:37
strik the	47:15 48:13 100:11
, just	12:9 14:-9 17:13 98:10 111:10
tomo'll==	111:22 112:-15
tomo'll	111:22 112:-15
@day the	28:-9 30:25 47:-16 54:33 109:12 111:20 112:-17
wire off	73:12 120:10
delivery #n	39:10 73:103
@job :	36:-8 41:26 42:-8 45:-8 70:33 73:10 74:26 75:10 76:-12 89:18 93:8 96:9
, like	23:10 26:10 73:14
like the	55:19 73:14 105:16
weekday==s	52:83 75:-10 89:-14 109:34 111:-8
weekday	52:83 75:-10 89:-14 109:34 111:-8
weekday #n	52:41 109:34
no @person	47:-9 109:25 110:19
fret and	27:8 43:-8 78:8 83:18
as its	43:-8 83:18
its own	2:-13 5:15 83:18
own $	2:-13 5:15 83:18
lock==	83:25
lock	83:25
#n inch	49:11 68:16
inch of	1:13 68:16
jointer==	98:21 100:27
jointer	98:21 100:27
the jointer	98:21 100:27
of machine	25:-8 98:21 100:37
machine ,	0:-10 25:-13 29:30 35:11 98:21 101:13
, ther	47:15 51:9 98:33 99:-12 108:21 112:9
vise==	25:-10 98:33 100:38 101:35
vise	25:-10 98:33 100:38 101:35
press .	98:13
know==	4:21 11:20 13:19 16:-8 25:22 27:10 28:15 32:-10 35:9 36:14 69:19 83:14 101:-12 102:9 110:-14 125:10
know	4:20 11:19 13:19 15:-9 16:-8 25:22 27:9 28:15 32:-10 33:-17 35:9 36:14 61:10 69:19 83:14 101:-12 102:9 110:-14 125:42
know what	29:-10 35:10 83:15
due ,	11:28
after #n	55:26 93:31 114:31 115:-8
specially==	52:-9 54:19
open up	52:-10 54:24
specially	52:-9 54:19
make that	99:30
arbor==	25:-10 99:54 103:9
renam the	25:-10 99:55
arbor	25:-10 99:54 103:9
gone ,	20:9 77:9 100:27
the clos	28:-8 31:50 53:-33 112:90 125:-9
the login	60:12
from @person	41:19 59:-24 60:48 64:-22 65:52
, off	5:64 17:45 48:-14 50:-9 71:31 77:-11 100:27 106:32
today was	62:34
was @person	28:-21 33:10 62:33 110:-24 125:57
last day	9:19 62:34
un==	62:-32 63:59 83:-13 84:34
)~",
R"~(un	62:-32 63:59 83:-13 84:34
un -	62:-32 63:59 83:-13 84:34
- retir	62:-32 63:59
drago==	58:9
drago	58:9
new ,	2:13 58:9
, bench	58:20 61:11
role $	14:14 58:8 61:20
minute now	35:18 99:-12 104:37
recheck==ing	11:-10 38:-9 45:15 89:-14 104:29
me about	13:46 17:-9 51:29 125:-21
about @wire	9:10 51:38 125:-21
till it	51:29 97:12 125:-19
mistak==e	112:21 124:27
mistak	112:21 124:27
mistak ,	112:21 124:27
my last	124:19
bench from	61:29 64:-9
crown :	103:45
bur==red	69:23
once the	43:-9 51:9 69:22 125:19
bur	69:23
off ,	1:8 6:9 17:10 32:17 69:23 84:11 112:19 125:-10
put that	62:21 69:23
public==	53:43
public	53:43
public holiday	53:43
nobody in	53:25
^ weekday	52:57
and #t	52:23 54:-17 109:19
stick on	67:10 71:9
scal ,	46:11
#n gram	68:15
out and	41:-8 95:33
, reseat	95:13
to save	0:-8 2:16 38:25
, would	0:9 1:8 11:11 13:10 16:19 25:23 38:24 83:11 125:-15
be too	0:19 105:-8 115:10 125:-12
yet ,	15:23 33:-8 125:23
pretend==	44:-35 125:69
pretend	44:-35 125:69
expect==ing	50:-19 66:-15 125:50
but==	16:8 24:8 36:-12 37:10 39:-17 43:19 55:15 58:14 75:-10 79:-18 89:8 106:19 112:11 117:11 125:56
but	16:8 24:8 36:-12 37:10 39:-17 43:19 55:15 58:14 75:-10 79:-18 89:8 106:19 112:11 117:11 125:56
#n but	36:-9 37:10 125:28
but i	16:12 125:12
i did	2:-8 70:11 72:10 80:10 124:9 125:19
not $	1:13 3:12 89:54 93:11 125:-27
not want	48:10 106:19 122:28 124:9 125:-22
want job	15:-12 33:-12 125:44
suppos==e	6:10 16:48 89:-11 125:44
suppos	6:10 16:48 29:16 47:-8 89:-11 125:43
^ suppos	16:48 47:-8 89:-11 125:44
@person put	33:16 50:18
no need	37:-18 38:-10 52:-11 125:107
to add	39:-16 120:21 121:-11 125:49
add that	120:10 125:28
that #d	36:14 125:28
round==	18:9 25:13 28:10 88:12 104:12 125:8
not get	53:11 57:20 90:10 108:16
if job	5:12 125:19
were done	5:11 33:10
actually==	3:61
actually	3:61
of peopl	58:15 63:8
on new	112:15
new year	53:9 112:13
quit==	43:-12 61:-13 62:73 63:-13 108:17
quit	43:-12 61:-13 62:73 63:-13 108:17
@person quit	61:-13 62:73 63:-13
quit $	61:-13 62:73 63:-13
bar again	86:9
it away	86:9 124:14
^ befor	0:8 5:-9 13:11 14:15 16:-12 25:12 27:11 29:8 31:10 33:12 44:12 99:11
befor i	1:-8 3:9 10:8 13:11 14:15 16:-19 25:12 27:11 29:10 31:10 33:10 39:12 44:12
wire :	0:12 19:19
leftover==s	0:44 8:-15 21:43
which of	0:39 15:24 16:-9 17:-9 22:13 25:13 28:34 33:-8
of our	0:27 25:12 62:23 63:-12 86:15 101:-9
leftover	0:71 4:-10 8:-15 21:42 39:16 70:10 82:-11
option==s	0:27
includ==ing	0:40 8:9 14:44 19:16 53:14
option	0:27
, includ	0:41 8:9 14:19 19:16 31:8
long piece	0:41
you tell	0:11 1:10 125:-9
same slot	0:64 1:-13 4:-16 36:24 74:-8
allow==ed	0:56 2:9 23:25 125:-12
allow	0:56 2:9 23:25 125:-12
allow $	0:59 2:9
mm bit	1:8
least $	81:10 120:9
could piec	1:34 125:-9
best==	1:59 2:25 22:-9 33:-8 36:-8 75:-11
best	1:59 2:25 22:-9 33:-8 36:-8 75:-11
;==	0:12 1:9 2:32 3:10 40:20 75:-12 80:-10 120:10 121:10
, both	1:11 39:8 70:17 83:11 102:17
;	0:12 1:9 2:32 3:10 40:20 75:-12 80:-10 120:10 121:10
could take	104:-12 125:43
the least	0:-8 1:33 2:9 42:20 120:9
mean==s	1:8
: wher	1:22
wher ,	1:15 2:9
if it	1:8 2:11 51:25
wher i	17:-8 89:17
everyth ,	62:11
would piec	1:22
i found	1:19 68:-8 69:16
which open	1:31
, when	9:48 11:22 28:16 29:20 30:34 31:-10 47:-9
when was	11:32 19:19 47:-8
was it	11:32 19:19 33:8 47:-9
it promis	11:57 47:-11
due up	11:19
fortnight==	10:13 11:9 47:16 116:11 120:18
fortnight	10:13 11:9 47:16 116:11 120:18
fortnight ,	11:10 47:16
recheck i	11:9
i mean	11:36 15:10 27:10 28:8 29:-13 39:8 50:14 53:11 104:12
mean $	11:36 27:11 104:12
recheck due	55:26
due this	11:10
pressing==s	11:50
pressing	11:50
even==ing	26:11 54:14 66:14
few==	2:33 27:11 80:-11 125:23
mov along	2:24 80:-10
along so	2:20 5:-8 80:-10
few	2:33 27:11 80:-11 125:23
few must	2:14 80:-10
be made	2:14 48:32 80:-10 125:-13
made $	2:14 80:-10
around so	2:22
so that	2:22 16:-10 36:12 39:15 43:15 77:18 92:10 112:13
as few	2:13
few as	2:13
as possibl	2:13 5:18
, tin	2:27 72:9
slid==e	0:-8 2:26 90:15
slid	0:-8 2:25 16:-8 90:15 92:10
slot nutward	0:-8 2:16
^ work	2:13 107:8 108:37
work out	2:24
i'd==	0:-12 2:26 13:11 25:8 29:16 36:-14 45:-10 75:-12 79:-14 95:24 105:16 125:84
i'd	0:-12 2:26 13:11 25:8 29:16 36:-14 45:-10 75:-12 79:-14 95:24 105:16 125:84
^ i'd	2:18 75:-12 79:-17 95:24 105:16 125:53
i'd like	2:17 5:8 13:12 29:21 75:-12 105:16 125:-15
like to	2:13 13:35 16:-8 19:11 26:11 29:16 125:-15
#d all	3:15
it stay	1:-8 3:29 24:14 91:12 93:-8
stay $	1:-8 3:30 62:-8 110:-9 125:31
acceptabl==e	3:43 41:-9 42:-13
acceptabl	3:43 41:-9 42:-13
acceptabl $	3:25
short or	3:30 42:-23
check a	0:-14 3:32 110:27
me ,	0:-15 1:-9 3:31 16:8 19:8 39:11 55:16 68:15 81:19 101:8 105:9
^ tabl	16:20
all slot	4:58 13:-10
to see	4:9 19:11 26:11 105:-8 115:10
each slot	0:-19 4:35
distanc==e	0:-9 4:34
distanc	0:-9 4:34
distanc from	0:-9 4:34
nut to	0:-8 4:13 46:10 85:-8
length for	4:54
so the	53:10 55:11 57:13 65:8 73:25 75:8 102:13 106:14 114:17 119:9
touch==ing	5:20 9:-8 87:8
many fret	2:-8 5:19 9:-8 13:30
get cut	5:18
cleverly==	5:8
cut it	5:8 60:13
cleverly	5:8
rule==	6:15
mark on	6:33
rule	6:15
the rule	6:15
when i	6:13 28:12 103:10
list with	10:22 14:32
, to	1:8 6:11
to print	6:11
print $	6:22
am about	4:9 6:14
about to	4:9 6:14
, print	6:22
drawer ,	7:9 22:11
a bin	7:13
label ,	7:47
pictur==e	7:10 12:8
pictur	7:10 12:8
@wire stock	8:31 9:-10 51:-8 66:38
have any	8:27 9:-9 12:17
wire we	8:22 11:-10 118:20
stick and	8:26 117:9 118:-8 120:14 121:-9
and piece	8:30
is lying	8:20
^ quick	8:17 89:8
: what	8:27
we own	8:17 98:11
remain==	3:9 8:-20 9:29 24:11 87:17
remain	3:9 8:-21 9:27 24:26 29:20 53:23 87:16 117:8 118:-8
remain $	8:-17 9:30 29:21
each wire	9:35 10:-8
overview==	9:24 14:15 25:12
wire supply	9:52
overview	9:24 14:15 25:12
dry==	9:23 45:8
dry	9:23 45:8
of every	4:25 8:25 9:15 16:21
every wire	19:33
to reorder	9:18
plac ,	9:17 25:8 53:11 108:17 125:-9
count==ing	9:24 31:-12 36:14 66:12
order ,	9:17 10:43 29:-15 32:20
, doe	0:-10 9:24 16:15 18:24 31:-12 101:14
we be	9:10 32:10
be work	9:10 53:-9 111:17
doe each	9:22 10:-8 14:34 17:-10
of what	5:12 10:8 84:-14 125:19
what to	5:26 12:-13 35:9
whom $	10:16 13:-8 17:-8 19:27 23:31 29:11 33:27
within #n	10:10
this time	10:12 16:-9 18:9 95:10
and what	9:-8 10:29 13:32 17:27 18:8 19:-13 20:30 23:-11 29:-20 32:8
purchase==s	10:57 11:-14 47:-18
less==	10:56 11:-16 48:-9 51:9 120:9 125:17
purchase	10:57 11:-14 47:-18
less	10:56 11:-16 48:-9 51:9 120:9 125:17
many job	12:20
work ,	12:30 54:-8
belong to	12:15 14:16 59:15 65:33
lack==	13:34
lack	3:-18 13:34 41:-12 42:50
@job lack	3:-13 13:22 41:-12 42:51
lack a	13:34
up @job	13:56 107:12
play==	13:30 61:11
play	13:30 61:11
card==	13:52
card	13:52 14:8
progress==	13:94 17:-8
progress	13:94 17:-8
on number	1:-11 13:50 16:19 38:-18 44:8 65:54 82:27 101:-12
staff==	12:-9 14:128 15:26 25:-15 29:11 60:11 63:22
staff	12:-9 14:128 15:26 25:-15 29:11 60:11 63:22
^ staff	14:102
staff $	14:73 63:23
team==	14:12
team	14:12
and who	10:11 15:-10 25:16 28:23
thos==e	0:30 14:32 17:14 21:12 43:22 57:15 81:10 97:20
thos	0:30 14:32 17:14 21:12 43:22 57:15 81:10 97:20
includ thos	0:17 14:25
thos that	14:25
doing @job	15:12 30:23 47:-11
fret==ting	12:43 15:24 25:-8 29:-8
of us	15:24 58:16 62:29
is meant	15:24 37:15
meant to	15:24 29:9 31:22 70:-13 71:8 125:20
be fret	15:24 73:14
given==	15:36 33:-8 81:12 125:-11
was job	13:52 15:35 16:-8 33:-12 44:-11 125:-22
given	15:36 33:-8 81:12 125:-11
given to	15:36 33:-8 81:12 125:-11
how $	16:29
i see	16:10 26:14 35:28
see the	8:10 16:9 26:14 35:28
group==	16:24 101:-8 121:11
press :	45:16
group	16:34 101:-8 121:11
matter==	16:23 107:15
suppos the	16:30 125:10
matter	16:23 107:15
once more	16:34 30:-21 62:-15 63:35 99:-9 102:55 125:51
, bar	16:9
and load	16:10
take ,	16:22 27:-9 83:12
, list	6:-8 12:27 16:21 22:26 27:-9
@job may	23:11 29:-8 84:8 114:13
far ,	17:11
, as	7:10 17:10 56:10 58:-11 62:-8 63:15 76:10 98:22 99:19
a tabl	16:9 17:11
tabl $	17:11 24:18
look along	94:9
#n pleas	0:-9 6:11 11:25 17:26 37:23 38:19 40:-9 83:-13 84:16
flat enough	17:27
it done	17:21 29:-9 30:9
to what	17:9 18:11
)~",
R"~(what we	17:11 119:31
just the	17:34 97:11 98:10
@wire hold	9:13 18:16
grip==	18:21
grip	18:21
@wire grip	18:16
grip in	18:16
deep enough	43:11 91:25
should the	5:10 18:26 125:23
be bent	5:-8 18:37
did they	19:8
their crown	19:25
by whom	9:-18 19:16 26:13 29:21 31:-8 32:38
@wire add	20:20
up in	5:17 20:15
in september	20:14 21:19
^ sinc	0:-8 8:9 20:15 33:24 37:14 107:23 125:-8
november ,	20:12 21:-10 33:26 45:-11 115:24
and out	20:48 21:-8
over ,	20:13 21:8
all time	20:32 93:9
last year	20:13 21:41 22:-9
sum==s	6:-8 20:60
sum	5:-10 6:-9 9:-9 20:117
sum for	6:-8 20:60
, from	20:9 49:10 88:-10 91:9 109:25 111:-15
tin spar	8:-10 21:22
spar us	8:-10 21:22
and in	9:10 20:-8 21:71
@wire only	21:58 22:8
useless==	8:-15 22:89
useless	8:-15 22:89
be good	1:9 22:14
too many	22:51 125:-11
many of	9:-9 22:46 25:18 125:-11
untouch==ed	22:44
^ old	22:27 70:-8 72:13 91:8
untouch	22:44
@wire set	23:32
being kept	23:23
@job already	13:15
already $	13:53 16:-8 23:9 44:-11 102:11 107:14 118:27 125:-15
spring -	24:33 35:10 45:26 75:-10
- back	24:33 35:10 45:26 75:-10
fret came	24:20 35:13
of spring	35:10 65:16
back for	35:18 37:9
, give	61:8
back==s	24:15
load do	24:29
do fret	24:8 125:61
pop==	24:11
#n pop	24:10 45:10
pop back	24:25 45:9
after it	24:20 93:20 125:-9
at it	1:10 25:19 107:11
run $	25:24 102:15
equipment==	25:51 26:21 35:-11 98:12
equipment	25:51 26:21 35:-11 98:12
stand==ing	13:-10 14:-8 17:24 25:24 89:14 91:11
machine and	14:-10 25:21 29:17
stand at	14:27 17:-10 25:24
which $	12:9 14:-12 24:41 25:13
time==s	11:22 26:40 27:9 28:11 29:-9 32:12 93:9
stage and	27:13
step are	27:10
report==s	27:23 33:24 104:23
know how	4:22 13:24 32:-9
and of	8:50 9:-15 13:-13 27:93
sander ,	25:23 29:22 98:-9 99:15
a free	26:-8 29:55 125:-14
replac==ed	3:9 30:11
^ somebody	8:-8 22:-8 30:21 46:10 76:10 85:-9 125:84
somebody want	27:12 30:8 35:10
i tell	30:35 35:23
tell a	30:8
a customer	23:19
that @person	31:22 43:-10 62:16 67:15 68:-9 107:20
glu ,	30:25 96:8
what give	30:19
way $	31:30 87:15 94:8
includ the	8:10 31:9
clos one	31:51
still wait	11:-12 12:30 23:-8 31:34
that has	31:28 65:17
and till	28:-15 29:-10 31:32
, pleas	0:17 4:-9 17:-10 20:-14 21:8 29:26 30:-10 31:18 32:-9 35:26 50:9 58:12 59:13 73:17 84:11 98:-19 100:28 103:-11 105:-8 106:35 109:8 122:24 125:-11
pleas ,	11:27 21:11 31:19
doe lindwurm	27:-20 32:72 121:-8 125:-8
lindwurm take	27:-20 32:23 121:11
size==s	0:-8 7:19 32:26
at lindwurm	32:47 119:43
from ,	1:-8 19:-9 32:24 33:8
long did	32:12
really take	32:12
wire pleas	8:-8 19:-8 32:47 46:10 85:-8
enter==ed	29:-11 33:54 124:47
what @person	29:-8 33:55
enter	29:-12 33:53 39:15 109:9 124:47
who put	26:19 33:25
^ log	33:96 39:13
log $	33:130
has anybody	20:-10 21:-9 33:33
explain==	35:63 125:-8
command==	35:85
explain	35:63 125:-8
explain the	35:42
command	14:-8 23:-10 35:139
command $	35:53
command==s	23:-10 35:54
question==s	23:-10 35:54
more of	24:-8 35:11 70:-9 71:11
the command	35:31
, show	20:8 23:23 28:13 35:17
what #n	35:18
@job ;	0:18
tin have	0:14 81:17 82:-11
after ,	0:63 105:20
i still	0:-10 1:18 125:23
still make	0:-9 1:18
would go	0:10
away with	2:13 100:42
shuffl==e	2:80 13:-13 33:-8
shuffl	2:80 13:-13 33:-8
shuffl the	2:23
nut ,	0:18 2:12 4:-10 16:8
, using	2:23
tin has	2:12 72:8
, dress	1:35 3:31 39:-9 50:-13
dress ,	1:35 3:31 39:-10 43:44 50:-13 107:-11
fret length	4:41
else==	37:9 38:28 65:27 97:12 99:10 107:-8 113:11 125:-10
and noth	5:11
else	37:9 38:28 65:27 97:12 99:10 107:-8 113:11 125:-10
noth else	97:13
else ,	113:11
for cut	6:17
- millimetr	7:12 74:11
apart==	7:12
get new	7:13
apart	7:12
together==	5:16 8:-9 9:44 10:13 17:17 29:-8 67:8
and all	8:-8 9:46 42:15 45:12 78:-10
together	5:16 8:-9 9:44 10:13 17:17 29:-8 67:8
together $	8:-8 9:46 10:14
on december	11:18 112:12
mess==ed	11:18
mess	11:18
moment==	12:42 25:9
fret at	12:43 25:-8 29:-8 41:14
moment	12:42 25:9
moment $	12:42 25:10 29:-9
point==	12:9 14:-9 39:12 41:26 45:-10 51:9 82:27 88:20 125:15
point	12:9 14:-9 39:12 41:26 45:-10 51:9 82:27 88:20 125:15
sit at	14:11 58:12
, still	3:-16 16:27
sunk $	17:34 89:24
high==s	17:41
low==s	17:41
and low	17:41
@job should	17:8 47:13 65:13 83:10
sit==	18:10 58:13 90:11
^ with	0:24 33:-10 36:17 70:-11 82:10 89:9 94:9 96:9 109:11 114:10 121:36
bottom ,	74:12
@wire sit	18:10
sit in	18:14 75:17
hold in	8:10 18:51
sum==	5:-9 20:58
scrap and	21:13
week ,	11:-8 22:10 26:12 28:26 29:14 30:26 52:-15 53:9 54:32 125:8
could be	0:21 39:-8 91:27
@wire one	22:65 50:14 82:10
keep for	23:38 84:15
for whom	23:56
^ was	13:54 28:-20 33:-8 44:-11 110:-22 125:45
asid ,	23:32
up ,	14:11 16:15 31:22 70:11
uncertainty==	24:11
and give	24:11 40:16
uncertainty	24:11
can work	25:16 98:11
once $	25:16
a board	76:10 104:9
edge==s	27:8 42:20
corner==s	27:52 43:8 103:9 104:39 108:-8 125:15
, usually	5:-10 27:47
usually $	5:-10 27:47
overload==ed	29:11
overload	29:11
so it	3:-16 9:-9 20:11 24:14 29:10 41:21 75:10 77:-8 89:-8 91:10 94:11 95:16 101:23 119:10 125:-8
, glu	30:26
delivery date	11:11 30:21 31:14 118:12
refret ,	29:-10 30:36
someon==e	38:30
someon	38:30
they have	119:19
one as	31:42
averag==e	27:24 29:-16 32:56
averag	27:24 29:-16 32:56
enter $	33:35 124:47
report sinc	33:26
ever do	33:30 55:10
anyth with	28:10 33:26 40:10
: who	15:11 25:9 33:13
book command	35:22
manual==	14:-9 35:48
manual	14:-9 35:48
in here	14:-9 35:48 58:14 115:10
tell you	35:24 113:22 119:11
you that	35:24 119:11
that a	35:13
august==	20:41
september ,	21:23
, with	2:9 16:-12 18:24 21:10 27:9 39:10 42:13 49:13 64:10 72:10 78:-11 88:-12 93:17 105:10
no .	0:11 15:20 23:-9 36:22 38:11 47:-9 48:8 70:32 73:12 93:-12 102:22 106:27 117:11 125:-12
. #n	0:10 15:19 23:-10 36:34 38:9 47:-10 70:31 72:8 73:10 77:-11 91:-8 92:28 98:11 102:21 106:26 117:21 120:16 125:-19
^ pleas	0:-10 1:14 2:16 3:-10 4:12 5:-11 6:-19 9:-8 14:15 15:21 16:-10 17:20 18:9 19:14 20:-14 22:22 23:23 26:13 28:-9 29:-17 33:14 35:12 36:15 38:-8 40:10 41:12 43:-21 44:-8 45:-13 48:19 49:10 50:-9 57:13 58:10 59:9 63:9 64:-9 66:-10 71:-9 77:-12 81:8 82:-9 83:-12 84:-15 89:-8 91:-9 92:-13 93:11 95:9 98:8 100:-21 101:8 106:-9 107:8 108:14 110:13 115:16 116:8 122:-10 125:-17
^ go	36:16 55:12 57:19
go ahead	36:16 57:19
ahead and	36:22 55:12 57:19
yesterday afternoon	40:21 70:-9
at half	36:9 43:9 70:-8 107:17 111:15
===	36:49 70:-8 125:-13
=	36:49 70:-8 125:-13
, same	36:25 95:52
#n ther	36:25 125:-11
ther ,	10:14 25:28 26:-8 36:25 55:11 125:-11
the other	1:11 6:11 14:35 17:-11 36:22 50:-14 83:-11 84:20 92:23 117:28 125:-21
other #n	36:22 50:-14 92:18 114:30 117:28 125:-19
have used	125:13
, but	1:9 3:-8 16:9 24:9 43:19 71:10 75:-9 89:9 106:19 117:11 125:-12
be kept	37:17 38:9 83:27 84:-9
save the	2:10 36:-12 37:23
@job top	36:-12 37:23 41:10
top fret	36:-12 37:23 41:10
side for	23:23 37:15
think==	0:-10 3:14 30:10 38:-8 124:8 125:43
i be	5:11 29:25 125:13
think	0:-10 3:14 30:10 38:-8 55:16 62:-11 124:8 125:79
you think	125:10
think $	0:-8 3:14 125:10
@wire again	38:25 51:23
on piec	1:-10 36:-11 38:38
pool==	38:20 65:33
go back	38:26
pool	38:20 65:33
pool $	38:20 65:33
may have	38:43
#d now	38:30 42:15 78:10
reservation==	25:-8 26:22 36:-11 38:47 40:-16 106:74 125:-8
the reservation	36:-9 38:57 40:-15 106:36
#d stick	38:24 70:20
would you	13:11 26:16 37:10 38:24 106:10
we'd==	1:-9 31:-13 117:28 125:45
we'd	1:-9 31:-13 117:28 125:45
^ we'd	1:-9 125:34
cancel $	1:-9 106:31 125:22
: @wire	39:24 50:-16 66:20
into drawer	39:9 79:10
get #n	32:17 39:10 120:-13 121:11
#d /	39:9 80:8
across ,	41:-8 42:18
overall==	5:25 29:-12
was put	83:-9 84:24
overall	5:25 29:-12
^ in	3:8 16:9 20:16 28:12 39:11 76:17
tin now	39:11 72:12
now :	25:9 39:12
#n point	39:13 41:27
point #n	39:13 41:27 51:9 88:20
so call	39:13 119:16
leftover==	0:27 4:-9 39:16 70:10 82:-11
i've got	16:15
leftover of	39:16
i was	0:9 1:11 13:12 19:8 28:10 38:9 39:-19 43:17 104:9 125:18
was going	39:-14 125:19
tin but	39:-16 79:-17 125:45
but it	39:-14 112:11 125:21
bit for	79:11
for drawer	1:-8 39:17
#d millimetre	3:-10 16:11 18:9 41:19 92:11
millimetre ,	3:-8 18:10 39:15
has gone	0:-11 40:10 75:18 100:-8 106:15 122:17
)~",
R"~(gone in	0:-11 40:10 75:18 81:16 82:-11
worn==	40:14 81:11
becaus of	40:13 53:11
worn	40:14 81:11
reason==	23:-10 29:17 38:9 41:-9 48:27 91:25 94:-8
corrod==ed	40:9
reason	23:-10 29:17 38:9 41:-9 48:27 91:25 94:-8
, reason	40:9 48:27 94:-8
reason :	40:9 48:27 94:-8
corrod	40:9
mayb==e	86:-8 125:32
mayb	86:-8 125:32
^ mayb	86:-8 125:32
mm on	41:17 87:10
^ #p	16:-13 41:23 44:26 77:35
&#d#p	41:23 70:20
put down	41:17 82:-8
as the	14:8 16:-10 18:9 30:9 41:16 73:15 82:-8 93:17
the length	4:39 41:16 69:11 82:-8 85:10
check==ed	41:14 88:11 91:19 94:8
caliper==s	41:30
and got	41:15
to measur	41:11 125:56
measure ,	16:11 41:-19 77:-9 125:65
fret :	42:11
millimetr $	41:-10 42:11 55:33 92:14
lack==s	3:-18 41:-12 42:50
lack #d	3:-13 41:-12 42:51
raw ,	1:-8 39:14
tang ,	88:9 91:9
, so	0:-18 1:-21 2:-31 3:-11 4:17 5:-15 7:-9 10:-11 17:-12 20:-8 25:8 27:-14 29:-8 30:-16 35:9 36:-8 37:9 40:9 44:-13 45:-9 48:21 50:-13 51:12 55:10 57:20 58:16 60:12 62:10 63:-11 64:21 66:-8 73:29 75:11 78:-13 80:-10 82:12 83:10 87:9 89:-16 91:-13 99:34 100:15 101:11 103:25 104:-8 105:-17 106:17 110:-8 111:10 112:8 115:20 116:10 117:-8 119:30 125:-51
, number	42:22 98:12
: fret	41:-8 42:18 96:11
to a	23:10 41:-8 42:18 65:29 85:10 99:14 120:-11 121:12 125:-14
afraid==	42:-18 125:24
afraid	42:-18 125:24
clean and	1:13 43:29
finish seat	43:23
, start	43:33 107:27
polish==ed	43:44
i've just	18:9 29:12 43:44
complet==e	13:-8 43:72 83:9 84:18
complet	13:24 17:-8 43:125 64:-8 83:8 84:18 107:-19
complet ,	29:10 43:49
yesterday at	43:22 44:24 117:12
complet==ed	13:32 29:9 43:53 107:-15
be clos	43:46 53:31
clos ,	43:23
, everyth	17:28 33:25 43:22 117:11
not finish	43:-18 108:37
will go	43:-9 108:28 125:16
^ thos	43:25
fret have	45:16
been press	125:14
as of	8:9 98:29 107:11
gave==	44:10 70:50 75:-10 95:16 97:11 101:-8 102:11 125:-16
squeez==e	2:-8 16:24 30:11 44:12
gave	44:10 70:50 75:-10 95:16 97:11 101:-8 102:11 125:-16
^ gave	44:12 95:17 97:11
#n a	44:12 69:14 95:17 97:11
ran==	39:15 44:24 48:18 67:8 68:-9
ran	39:15 44:24 48:18 67:8 68:-9
ran the	44:24
press yesterday	44:34
lot on	44:19
had fret	44:22 77:20
under #c	44:22 51:10
not been	125:34
action==	44:-9 101:14 120:10 124:35 125:46
action	44:-9 101:14 120:10 124:35 125:46
noth has	5:10 45:31
mov $	45:39 115:-10
sprung==	17:-11 24:41 45:32
i had	23:8 45:10 66:-9 69:19
sprung	17:-11 24:41 45:32
have sprung	45:15
sprung $	45:30
lift $	1:-17 45:63 84:33 112:48
#n had	45:15 72:11 75:8 89:-8 95:9
: the	45:16 94:8
mirjam==	46:10 125:28
mirjam	46:10 125:28
: @job	82:14
, bound	27:9
instrument==	5:9 11:14 17:12
, fret	3:16 41:-21 42:-9 76:11 90:11 92:27 95:8
instrument	5:9 11:14 17:12
, a	76:10 97:11 98:9
instead of	47:52 54:23 109:-17 111:15
new date	30:-12 47:49 118:18
cancell ,	48:18 112:9
ran out	39:15 48:18
money $	21:12 48:18
is broken	48:27 94:-8
kill==	48:21 121:11
kill	48:21 110:10 121:11
@job took	48:25
took it	48:25
her==s	48:-10 60:13 125:34
might cancel	48:-11 119:-21 125:77
her $	48:-10 59:20 63:21 125:33
wire fine	49:10 88:-10
fine ,	49:10 88:-10
stainless steel	49:11
nickel==	49:24 88:-11 125:41
silver==	49:24 88:-11 125:41
low ,	17:30 92:30
nickel	49:24 88:-11 125:41
silver	49:24 88:-11 125:41
nickel silver	49:24 88:-11 125:41
silver ,	49:24 88:-10
'==	2:9 10:17 92:11 95:20 107:14 114:17 122:10 125:-16
'	2:9 10:17 92:11 95:20 107:14 114:17 122:10 125:-16
defin -	85:8 120:10
, material	49:11
creat==e	49:12 58:14 98:15 120:10
feet==	51:21 58:9 68:10
creat	49:12 58:14 98:15 120:10
pleas creat	49:12 58:14
creat a	49:12 58:14 120:10
crown ,	16:12 49:8 77:23 80:-8
stick length	49:12
feet	51:21 58:9 68:10
#n feet	51:21 68:10
feet $	51:9
lindwurm $	32:-8 116:16 119:28 122:9
stick ,	8:20 39:-12 50:27 66:-9 116:23 117:-14 120:16
from ferro	5:10 10:-9 50:19 119:10 125:22
daughter for	116:20
spool ,	50:9
stock ,	2:-11 5:15 50:10
+==	50:17
+	50:17
stick @wire	50:49 116:-8 117:-11
cm $	51:25
, book	105:14
fair==	1:9 29:12 50:19 61:10 116:-9
fair	1:9 29:12 50:19 61:10 116:-9
the fair	50:19 116:-9 120:8
take into	50:17 72:19
gross==	50:8
came ,	50:34 67:-24 117:11
gross	50:8
gross ,	50:8
the empty	50:34 67:-24
#n g	50:11 51:-9 66:-14 67:37 68:27
read to	17:13 50:18 67:-12
just now	25:11 50:14 124:14
mean ,	39:8 50:14
, supplier	50:22
supplier lindwurm	50:22 118:12 121:13
lindwurm ,	32:56 39:-8 50:14 116:21
, pric	39:-10 50:19 117:12
pric #d	50:19 117:13
postman==	50:32 66:-17
postman	50:32 66:-17
ferro $	32:-8 50:20 66:-8 122:12 125:24
hand==ed	15:27
, each	7:13 97:11
a hard	6:10
long ,	101:14 104:17
, were	71:12 72:13 75:-8
hand in	66:14
been deliver	50:14 125:20
ought==	125:51
ought	125:51
ought to	125:51
level for	125:36
earn==ed	51:10
earn	51:10
as low	51:14
low from	51:13
^ below	51:12
feet of	51:12 68:10
reorder $	9:35 51:8
again if	51:25 125:-8
<==	51:11
<	51:11
wher it	1:-9 3:21 36:14 51:-16 125:36
@day and	11:9 29:8 109:35 111:-17
and @day	11:9 29:8 109:35 111:-17
@day :	52:33 109:-13 111:16
#t and	52:16 54:-16 109:19
the @day	52:38 54:-13 101:21 105:9 125:-9
hour to	52:19
: @day	54:10 109:11
electrician==s	53:12
the plac	2:9 14:31 28:13 53:8 125:-9
electrician	53:12
nobody here	52:-10 53:25 55:17
open this	52:-23 54:12 125:40
from #t	52:-9 54:12 101:24 105:17
tomorrow ,	10:9 29:9 54:13 105:32 110:13 125:34
, until	30:9 54:13
we stay	54:26
stay open	54:21
open till	54:21
the usual	54:18
usual hour	54:18
normal==	53:-12 54:20 112:26
of its	54:17
normal	53:-12 54:20 112:26
normal hour	54:11 112:13
additional==	30:11 52:-11 54:23
o'clock==	29:-9 52:10 54:23 109:9 111:34 115:33
additional	30:11 52:-11 54:23
additional open	52:-11 54:23
o'clock	29:-9 52:10 54:23 109:9 111:34 115:33
#n o'clock	29:-9 52:10 54:23 109:9 111:34 115:33
o'clock $	52:10 54:11 109:10 111:17 115:34
door==s	54:20 122:12
to open	28:-8 52:-15 54:-10 125:75
nice==	120:8 125:40
it would	26:8 125:40
would be	26:8 125:40
nice	120:8 125:40
gaug read	55:18
#n lb	55:18
lb now	55:18
gaug division	55:18
to europ	55:20
currency==	55:53
gaug is	55:20 102:13
is rat	55:21 85:13
dress loss	55:56
be #n	93:11
useful==	55:24
useful	55:24
least useful	55:24
not chang	58:16 125:9
perhap==s	125:66
higher==	18:15 125:26
perhap	125:66
higher	18:15 125:26
bar==s	2:10 4:17 5:-8 27:-14 58:18 65:9 86:21
peopl ,	58:15
he may	58:23
urban==	58:11
urban	58:11
person of	58:13 62:-16 63:28
shop ,	58:11
, work	2:11 25:56 29:-8 58:10
register==	3:-10 32:-10 41:25 61:17 85:8 92:-8 98:23 100:8 122:15
thing==s	10:9 11:14 29:-9 33:9 35:21 48:10 58:20 83:9 84:11
register	3:-10 32:-10 41:25 61:17 85:8 92:-8 98:23 100:8 122:15
pleas register	3:-10 41:25 92:-8
only want	30:10
thing ,	48:10 55:16 83:15
klara==	58:42
klara	58:42
the user	59:21 60:-8
user with	59:15
show up	117:8
id==	59:17
u==	59:17
id	59:17
u	59:17
@person ,	15:13 28:25 29:21 41:20 59:19 62:-20 63:21 64:10 110:-9
, note	59:17 105:20 121:18
note that	36:9 53:17 59:17 87:11 97:13 108:34 125:8
treat==	113:35
treat	113:35
^ treat	113:31
nobody now	60:16 65:19
ditch==	59:-9 60:27 81:20
ditch	59:-9 60:27 81:20
^ ditch	59:-9 60:27 81:20
the uid	60:23
k==	61:16
k	61:16
k $	61:16
marri==ed	61:22
inka==	61:9
marri	61:22
got marri	61:23
inka	61:9
lead==s	61:8
her the	61:11
, window	61:11 64:40
^ perhap	125:40
should get	125:18
him==	15:10 29:-10 58:16 61:18 62:39
let @person	62:21 63:9
, remov	48:10 57:21 62:23 112:21
him	15:10 29:-10 58:16 61:18 62:39
retir==ing	62:10 63:-8 125:36
retir ,	62:13 63:13
leav==ing	110:-9 125:31
stay==ing	62:-8 110:-9 125:31
not leav	62:-8 108:17 110:-9 125:26
think==ing	62:-11 125:36
think about	38:-8 62:-11 125:59
^ un	62:-17 63:31 83:-13 84:34
retirement==	62:-9 63:62 83:11 110:-11
@person came	62:-8 63:34 110:-10
retirement	62:-9 63:62 83:11 110:-11
hir==ed	58:12 63:22
reinstat==e	62:-10 63:38
hir	58:12 63:22
reinstat	62:-10 63:38
in again	63:11 95:24
hand @job	15:26 64:8
put @person	64:48 105:9
belong==s	14:16 59:15 64:8 65:20
with @person	30:9 59:13 64:17
from here	8:10 52:32 64:25 110:-8 111:-9
assign==	64:35
assign	1:26 12:12 15:26 27:-9 29:-8 47:-21 59:-8 64:47 65:42 125:-8
know==s	15:-12 33:-12 61:12 125:32
know ,	15:-17 29:21 33:-11 101:-8 102:10 125:23
)~",
R"~(grab==s	38:20 65:41
grab	38:19 42:20 65:41 105:11
for grab	38:22 65:42
, anyon	65:17
anyon can	65:17
can have	1:-9 39:15 65:21
time may	27:-8 30:8 65:10
assign==ed	1:26 12:12 15:26 27:-9 30:8 47:-21 64:12 65:43
no #n	47:-21 65:64
, somebody	65:31 102:14
somebody else	65:31
total==	50:-8 66:49
total	10:26 50:-8 66:49
in total	66:50
exactly==	50:-14 66:11 68:26
exactly	50:-14 66:11 68:26
exactly #n	50:-10 66:11 68:15
i just	50:-9 66:19 124:63
just went	66:20
altogether ,	62:10 67:9 68:-8 100:8 106:15
scale==s	66:-12 67:29
scale	66:-12 67:29
better==	95:10 125:52
could not	0:11 47:14 48:-9 63:10 91:19 108:16
better	95:10 125:52
metr of	69:16
#d gram	68:53
weight==	68:9
weight	68:9
the weight	68:9
weight of	68:9
is what	91:11
guess==	125:11
guess	104:9 125:11
@wire would	1:-10 125:11
that yet	125:11
is really	40:-11 69:42
miscount==ed	51:-8 69:35
say #d	3:9 92:16
miscount	51:-8 69:35
miscount $	51:-8 69:35
be #c	51:18 69:34
written==	26:10 40:23 69:14
longer than	69:30
written	26:10 40:23 69:14
written down	26:10 69:27
knock==	28:35 29:-20 30:9 47:-8 69:20 95:29
knock	28:35 29:-20 30:9 47:-8 69:20 95:29 108:9
i know	69:20 83:15
know $	11:11 15:10 25:23 27:10 69:20 110:-12 125:29
say ,	125:23
gave me	70:54 75:-10 125:-15
#n make	0:25
them from	52:22 111:-8 122:11
from it	47:15 48:-9 70:18
: slot	70:34 91:9
and cut	70:14
but the	36:-9 37:10 43:19 79:-17 125:44
the top	4:10 32:-9 71:11 73:26 75:-9 90:9 97:26 104:12
were cut	71:17 75:-9
i pull	95:23
out again	72:13
back out	72:35
has it	15:13 60:10 72:9
any fret	72:-11 125:36
from delivery	39:10 73:21
all done	43:18 73:14
stick with	73:32
with delivery	73:32
delivery number	73:30
i saw	70:11 71:18 74:19 82:-11
, flat	18:21
the bottom	74:10
slot :	74:9 76:19
sawn==	74:48 76:-12
follow==s	16:-9 18:9 74:9
sawn	74:48 76:-12
bottom that	74:10
follow	2:-8 16:-9 18:9 69:11 74:9 75:14 93:17
follow the	16:-9 18:9 74:9 75:15
i measur	3:-8 39:11 72:-8 74:9 78:21 88:12 92:12
the shift	75:25
now sit	75:18
relaid==	75:10
relaid	75:10
slid==	92:10
down by	89:-10 92:13 98:10 125:34
caliper on	41:14 76:12
fingerboard==	27:9 74:-8 76:52 87:12
fingerboard	27:9 74:-8 76:52 87:12
@job fingerboard	76:35
fingerboard is	76:14
: job	3:15 76:13
how wide	8:29 9:-10 125:16
crush==ed	77:10
crush	77:10
snap==ped	77:117 101:10
snap	77:117 101:10
hammer==	27:11 77:35 125:45
the hammer	77:35 125:45
hammer $	77:35 125:45
writ==e	10:20 55:9 77:32
mangl==ed	77:32
writ	10:20 55:9 77:32
mangl	77:32
anew ,	78:10 102:16
been made	72:-9 78:40
made again	2:9 78:29
replacement==	78:26
replacement	78:26
is made	2:9 78:22 85:12
over again	16:22 78:18
i think	124:8 125:11
or so	79:8 125:20
so ,	26:9 79:8
, unmeasur	39:-10 79:33
bunch==	79:15
bunch	79:15
a bunch	79:15
bunch of	79:15
measur ,	79:24 80:17
roughly==	79:11
roughly	79:11
unknown==	79:29
unknown	79:29
have put	39:8 79:-18 125:23
full $	79:-17 83:18 125:22
i've gone	42:14 78:-10
here is	63:8
, straight	52:42
was a	112:21 124:15
quiet==	33:14 89:12 125:8
somebody ought	125:33
quiet	33:14 89:12 125:8
is quiet	33:14 125:9
box==	0:9 7:36 40:-9 81:33 117:10
box	0:9 7:59 40:-10 81:32 117:10 120:12
scrap==ping	125:32
could do	29:21 125:23
a few	27:12 125:31
pair==	82:23
pair	82:23
pair of	82:23
s on	82:12 125:8
two==s	82:29
two	82:29
not using	82:-15 86:9 125:18
they'd==	116:9 120:19 125:8
they'd	116:9 120:19 125:8
by all	83:26
whatever==	83:25 103:15 124:8
whatever	83:25 103:15 124:8
want ,	36:14 83:12
, piece	82:10 83:12
and new	83:24
stuff==	5:11 22:12 49:8 80:-8 83:37
stuff	5:11 22:12 49:8 80:-8 83:37
whol lot	37:-8 73:-11 83:16 84:25 121:8
nobody take	83:18
, keep	3:25 40:17
keep it	87:11 119:16
for that	18:9 31:10 84:10 101:15
all hold	23:51 83:-8 84:25
oak==	85:10 125:27
we'v a	85:11
oak	85:10 125:27
neck and	85:11 94:8
nam==ed	49:14 57:15 86:11 98:35 99:29 103:-10
@wire bar	85:17
nam	49:14 57:15 86:11 98:35 99:29 103:-10
bar nam	86:12
, hollow	85:8
long and	82:8 85:30
result==	50:-16 66:21 85:10
the sole	85:21
result	50:-16 66:21 85:10
- bar	86:11 98:29
grand==	0:-8 3:11 43:10 82:10
grand	0:-8 3:11 43:10 82:10
knif==e	85:9
knif	85:9
mapl==e	83:9 86:14
^ register	98:25
register a	3:-10 41:25 85:8 92:-8 98:25
the name	7:17 56:9 58:14 61:17 98:9 105:10 121:9
name of	61:17 98:9 105:10
mapl	83:9 86:14
length ,	69:11
bar short	86:23
gone for	86:18 100:10
long from	46:10 85:-9 86:23
of that	70:-10 71:11 86:11
retir the	86:9 117:-12 118:12
drop -	86:12 100:20 122:11
away ,	1:11 3:9 38:-9 63:10 86:10 100:8
, strik	86:9 122:9
strik it	86:9
nam hollow	86:12
using it	86:14
neck lie	87:27 94:-9
measur from	87:10
hang==s	87:15
so a	87:31
over it	87:20
barb on	88:32
our @wire	88:12 118:12
thickness of	39:-9 88:35
twic==e	88:12 113:11
barb ,	88:12
twic	88:12 113:11
&#p@job	89:22
firm==	89:13 116:10 122:13
i laid	89:32 95:-9
straightedg on	89:12 125:8
firm	89:13 116:10 122:13
teeter==s	89:12
, feeler	89:10
but not	58:16
, edge	75:-10 89:20
look a	89:25
eye==	36:-8 37:10 76:10 79:14 89:47 92:-15
eye	36:-8 37:10 76:10 79:14 89:41 92:-15
by eye	76:10 89:47 92:-15
eye ,	79:14 89:41 92:-15
gap at	91:21
tippy==	89:22
tippy	89:22
side ,	37:16 89:31 97:-9
quickly==	19:10 29:11
quickly	19:10 29:11
the feeler	18:9 90:15 92:10
^ under	44:10
the wood	90:32
wood ,	90:15
gap ,	90:37
daylight==	90:10
^ you	36:14 90:10
you can	1:-10 3:10 19:10 53:10 90:20 99:11 102:9
daylight	90:10
dirt in	0:-12 36:-12 91:50
old glue	91:20
glue pick	96:16
stand up	41:-9 91:25
not deep	91:25
check #n	91:19 114:14
and could	0:12 91:19
find any	91:19
hit==ting	91:20
hit	91:20 124:8
tang hit	91:20
hit bottom	91:20
sawdust==	4:-12 18:-13 91:46
sawdust	4:-12 18:-13 91:46
feeler==s	92:8
measur with	92:10
feeler $	92:10
hundredth==s	41:-16 92:67
hundredth	41:-16 92:67
#n hundredth	41:-16 92:67
the line	11:9 92:43
lower than	92:22
than #n	51:10 92:16 120:10
, below	92:22
a #o	92:13 99:25 125:14
how low	92:23
too low	92:10
than the	41:-11 55:15 69:17 92:28
end at	87:8 93:19
final==	41:-10 77:-14 93:46
final	41:-10 77:-14 93:46
final fret	41:-10 77:-14 93:46
forever==	89:-12 93:40
goe up	89:-11 93:40
forever	89:-12 93:40
its very	87:17
rod==	5:27 94:17
tighten==ed	94:17
rod	5:27 94:17 116:15
tighten	94:17
forward==	94:13
forward	94:13
perfectly==	94:8
perfectly	94:8
and seat	95:21
reseat half	95:11
in their	95:8 103:10
#n reseat	95:41
shim==	95:18
gave fret	95:17 97:13
reseat==	43:23 95:13 124:33 125:17
did a	95:17 97:14
reseat of	95:38 96:-9
reseat==ing	95:42 96:-9
put glue	96:18
: #r	52:31 96:25
one ,	96:10
thin==	89:11 95:13
thin	89:11 95:13
, clamp	96:27
itself==	97:12
itself	97:12
i levell	75:-11 97:31
ston==ed	17:9 97:26
ston	0:-9 45:-12 69:16 97:104
individually==	97:14
individually	97:14
abrad==ed	97:26
abrad	97:26
bandsaw==s	98:43 100:25
jig==	98:13 99:-9 100:42
new thing	98:34 99:-9
jig	98:13 99:-9 100:42
wheel==	98:14
up a	98:13
wheel	98:14
singl==e	57:15 98:11
machin kind	98:11 100:9
kind nam	98:11 100:9
slot saw	98:11 103:21
singl	57:15 98:11
a singl	57:15 98:11
singl #n	57:15 98:11
as many	98:23 99:20
many as	98:23 99:20
chang -	98:-8 99:12 121:18
- machin	98:-9 99:9 100:21
limit ,	13:-8 16:64 17:-10 99:21
#o press	99:25 125:14
arriv ,	88:-9 99:15 117:23
so we'v	2:9 99:26
minut==e	2:10 27:-10 32:11 99:15 104:33
make it	16:12 65:21 69:29 99:12 104:15 113:11
minut	2:10 27:-10 32:11 99:15 104:33
#n minut	99:15 104:33
the number	14:16 59:11 60:15 81:11 99:41 106:35 117:-11 119:13 125:-9
number of	14:16 27:15 60:14 98:10 99:42
workplac==e	99:31 103:-9
workplac	99:31 103:-9
take them	32:-8 100:17 122:26
them off	100:19 122:13
sander away	38:-9 100:26
router==	98:12 100:10
router	98:12 100:10
it from	48:9 100:18
belt==s	101:10
nobody can	0:-9 101:24
the belt	42:20 101:20
kaput==	25:-12 101:74
kaput	25:-12 101:74
usabl==e	101:36 102:33
usabl	101:36 102:33
, its	77:14 85:12 89:10 101:36
press can	101:9 102:13
both sander	101:16 102:8
#o sander	102:28
mend==ed	69:11 102:13
mend	69:11 102:13
polish==	43:20 103:8 104:12
nip==ping	103:21 104:17 125:-9
plac on	89:10 97:-9
occupy==es	14:14 15:13 103:21
occupy	14:14 15:13 103:21
the time	17:-8 21:11 27:13 43:-13 65:16 104:29 106:11 108:15
)~",
R"~(polish ,	27:26 43:20 104:8
hour ,	46:-8 104:8 105:12
, make	104:15 113:12
@day between	101:14 109:9
book it	105:23
block==	16:19 17:-11 85:16 97:13 105:16
inspection==	105:20
block	16:19 17:-11 85:16 97:13 105:16
inspection	105:20
to seat	107:23 125:16
interrupt the	108:53
the fil	108:30
off at	108:20
unfinish==ed	48:-8 108:66
stop ther	93:10 108:20
unfinish	48:-8 108:66
unfinish $	48:-8 108:66
- @day	52:-8 109:16
, hour	28:23
work hour	28:11
on holiday	83:15 110:16
sick==	61:-14 101:-8 102:11 110:40
sick	61:-14 101:-8 102:11 110:40
not here	110:46 125:-21
@person the	29:8 110:10
afternoon of	11:24 110:10
off next	125:9
recital==	110:11
recital	110:11
^ off	48:-8 108:42 110:20
, me	110:45
of her	109:-14 111:15
in till	110:-8 111:28
not a	53:9 77:9 90:9 112:20
closur==e	112:108
closur	112:108
a mistak	112:21 124:15
remov it	48:10 57:21 112:21
eve==	53:-9 112:25
be open	53:-8 112:12
eve	53:-9 112:25
fall through	112:36 119:19
no rush	47:12 113:42
until @job	43:-9 114:41
, other	114:30
lift==	95:28 114:38
lift the	95:28 114:38
, they	70:14 72:20 80:10 116:12 119:15 120:25
they say	116:22
, promis	116:10 118:24
promis in	116:10 118:24
arriv==ing	116:12
with ferro	116:11 121:35 122:11
a fortnight	10:13 116:11 120:18
fortnight $	116:11 120:18
^ lindwurm	32:26 50:-8 117:36 118:27 120:-22 121:34 122:15 125:-8
the parcel	117:21
the lindwurm	31:-8 50:29 117:30 118:18 119:-9
yesterday ,	11:8 76:10 116:10
lindwurm order	117:8 118:14
order :	116:17 118:19
order number	116:20 118:26
#n should	106:36 118:25
late ,	118:12
rang==	4:11 118:18
rang	4:11 118:18
lindwurm rang	118:18
rang ,	118:17
becaus they	95:14 96:-9 119:19
withdraw==	48:26 119:24
withdraw	48:26 119:24
withdraw the	119:24
told==	33:13 45:10 47:13 57:20 64:11 66:29 69:8 75:8 101:-8 102:10 110:10
told	33:13 45:10 47:13 57:20 64:11 66:29 69:8 75:8 101:-8 102:10 110:10
ferro we	100:-8 116:10 122:16
harbour==	120:16 122:36
metal==s	120:51 121:-8 122:35
harbour	120:16 122:36
metal	16:21 17:-12 89:19 95:-9 120:51 121:-8 122:35
harbour metal	120:16 122:36
copper==	122:12
lane==	122:12
copper	122:12
lane	122:12
copper lane	122:12
lane ,	122:12
sold in	120:11
at least	120:8 121:16
least #n	120:8 121:16
heron==	120:8
tool==s	108:17 120:8
heron	120:8
tool	108:17 120:8
tool on	108:17 120:8
supplier list	120:8 121:-10 122:10
, pack	32:41 120:19 121:-34
alley==	120:10
- supplier	121:11 122:11
alley	120:10
, lead	121:22
lead day	121:13
kettl==e	29:11 120:9
kettl	29:11 120:9
week and	22:14 32:11 120:9
and want	4:10 120:9
#n kg	120:11 121:10
wren==	120:15 121:-12 122:27
fretwir==e	120:15 121:-12 122:27
wren	120:15 121:-12 122:27
fretwir	120:15 121:-12 122:27
wren fretwir	120:15 121:-12 122:27
street==	53:9 120:8
street	53:9 120:8
from order	120:8
order to	5:18 116:12 120:8
door $	53:12 120:8
metal ,	120:35 121:-8
dovetail==	120:14 121:-8
dovetail	120:14 121:-8
a minimum	120:16 121:-9
supplier ferro	121:15 122:24
ferro ,	5:10 27:-13 32:27 50:9 120:-8 121:58
ask for	121:18
only sell	120:12 121:9
quicker==	32:29 121:11
quicker	32:29 121:11
quicker ,	121:11
business==	29:10 100:-8 122:28
gone out	62:23 63:-12 122:17
business	29:10 100:-8 122:28
business ,	29:11 122:17
plum==	122:28 125:-21
plum	122:28 125:-21
that supplier	122:21
wait ,	108:22 124:16
scratch that	87:38 106:11 124:8
said==	53:-9 54:12 66:11 112:30
what i	124:70
said	53:-9 54:12 66:11 112:30
to report	102:14 124:14
report that	102:14 124:14
that ,	87:38 124:15
should not	25:13 65:13 125:-8
have gone	81:17 82:-11
hook==	57:58 100:-8
hook	57:58 100:-8
tablet==	57:73 100:-8
tablet	57:73 100:-8
tablet $	57:73 100:-8
plain==	56:13
text==	56:14
lamp ,	56:21
, http	56:13
plain	56:13
plain text	56:13
text $	56:14
wire .	71:23
. low	51:10
desk==	57:45
desk	57:45
notice==s	57:45
notice	57:45
, name	14:39
address==	32:12 56:9
longer ,	81:13
address	32:12 56:9
kitchen==	57:14 67:8
you add	20:12
kitchen	57:14 67:8
the kitchen	67:8
receiver kitchen	57:14
receiver==s	57:41 100:-13
offic==e	57:21
offic	57:21
offic $	57:21
will take	36:60 125:-28
and with	14:14 16:52 86:-25
^ its	87:35 91:20
, on	0:20 4:-9 9:-11 29:-9 31:22 110:70
give it	15:13 40:11 64:22
they'v==e	52:-15 82:14 110:10 118:41
they'v	52:-15 82:14 110:10 118:41
me #n	94:11 105:9 111:9
well ,	36:12 42:41 48:11 95:50 99:10
it has	50:14 87:15 94:38 125:-8
stood==	16:10
stood	16:10
load stood	16:10
stood #n	16:10
then $	0:-17 11:11 27:14 125:31
bar #n	86:-8 125:14
we never	10:-9 96:-8 122:15 125:44
won==	14:-11 33:-10 125:53
match==	14:-11 33:-10 73:26 125:53
won	14:-11 33:-10 125:53
match	0:20 4:-9 14:-11 33:-13 73:26 125:53
coffe==e	29:-15 107:14 125:77
coffe	29:-15 107:14 125:77
glass==es	33:-10 125:46
glass	33:-10 125:46
joke==	35:-12 125:73
joke	35:-12 125:73
joke $	35:-12 125:73
@person be	28:60 110:-13 125:-19
be off	28:42 29:-8 110:-35 125:27
she'll==	30:13 106:9 110:-12 125:25
she'll	30:13 106:9 110:-12 125:25
, she'll	106:10 110:-12 125:30
agre==ed	110:-11 125:14
@person want	106:20 110:-12 125:10
agre	28:9 110:-11 125:14
, could	6:9 125:12
nearly==	5:10 8:-9 13:-9 21:9 43:-43 125:87
nearly	5:10 8:-9 13:-9 21:9 43:-43 125:87
is nearly	13:-9 21:9 43:-43 125:87
when i've	4:16 125:34
i've finish	4:16 125:34
not make	0:12 113:-15 125:18
if #n	17:-9 27:10 89:-14 125:30
i'd rather	2:9 125:23
fret were	17:-21 33:58 45:12 97:-14
bar wide	86:-10 125:46
that @wire	1:-8 3:-9 8:47 19:23 31:20 51:-8 70:-9 71:11 88:-8
faster==	125:14
we bought	125:14
faster	125:14
to say	104:-12 125:42
sell==	32:18 118:9 120:10
did ferro	19:32 32:10 33:-11
last time	19:33 33:-11
doe undo	35:50
the radius	85:10 125:39
let me	6:9 16:8 28:23 31:10 38:-9 125:20
ask about	125:36
@job phon	13:-33 17:-8 48:10 125:80
fix==	125:24
talk==	55:19 112:-13 125:34
talk	55:19 112:-13 125:34
the littl	0:9 2:9 4:18 5:-9 7:12 16:-8 27:-14 33:9 36:-8 40:22
bit in	0:9 7:17
for line	0:8
is about	7:9 8:15 16:9
@wire stuff	5:11
of thos	0:16 57:15 97:20
thos littl	21:13
littl bar	2:10 4:18 5:-8 27:-13
groov==e	1:13 3:21 4:29 33:9 41:16 75:19 89:-13 93:-10 96:12
groov	1:13 3:21 4:29 33:9 41:16 75:19 89:-13 93:-10 96:12
#o groov	0:12 3:26 33:9
groov of	0:12 3:25 33:9 91:-8 96:12
of some	0:13
up by	0:21 4:-9 69:16
, long	0:14
long one	0:14
tin bit	0:54 2:11 22:-9 39:-15
lunch ,	60:9
just tell	17:13
me which	1:9 17:13
not mind	1:9 125:-8
anyway==	9:10
^ as	1:-13 14:8 16:-16 17:20 18:8 23:11 28:10 29:-12 32:11 35:19 55:22 100:17 103:-8 125:-11
as i've	28:13 35:21
anyway	9:10
anyway ,	9:10
wee==	8:12 15:9 20:-8 23:23 26:26 41:19 45:9 49:8 67:8 74:8 78:-12 92:8 94:10 97:9 98:8 104:10 125:-11
wee	8:12 15:9 20:-8 23:23 26:26 41:19 45:9 49:8 67:8 74:8 78:-12 92:8 94:10 97:9 98:8 104:10 125:-11
wee bit	3:15 8:16 42:-10 74:9 92:10
e'er==	26:18
would ther	11:10 12:10
e'er	26:18
e'er a	26:18
g'day==	0:12
that'll==	0:12
g'day	0:12
in ther	0:11 8:9 35:16
that'll	0:12
y'all==	1:-12 5:11 9:-16 11:13 15:11 16:15 26:11 27:19 29:-9 35:13 39:14 44:8 78:8 100:12 102:14 111:16 119:15
y'all	1:-12 5:11 9:-16 11:13 15:11 16:15 26:11 27:19 29:-9 35:13 39:14 44:8 78:8 100:12 102:14 111:16 119:15
what y'all	0:11 5:13
y'all got	0:11 8:11 26:13
in that	0:11
that tin	0:11
in number	0:9 1:-10 3:26 42:-9 91:12
a wee	3:15 8:16 18:-8 42:-11 49:8 74:9 88:8 92:9 96:8 97:10 98:8 104:10 125:-9
you ,	13:9 113:22
job number	0:8 6:16 13:21 26:8 37:14
fret number	0:8 13:-9 17:17 90:17
what from	0:23 5:33 8:-9 19:-11 33:-8
the box	0:25 7:23 117:11
box of	0:25 7:10
remainder==	0:19 110:19 112:23
match==es	0:20
^ to	0:18 2:-11 4:-8 5:13 10:11 15:27 57:20 120:19
remainder	0:19 21:12 110:19 112:23
advis==e	15:27 29:21
item==	1:23 22:-8 23:20 33:40
suitabl==e	18:15
mr==	13:20 28:12 30:12 109:-11
advis	15:27 29:17 101:15
pleas advis	15:27
advis which	15:27
item	1:23 11:41 22:-8 23:18 33:37 81:15
suitabl	18:15
mr	13:20 28:12 30:12 109:-11
mr @job	13:20 30:12
record==s	0:25
remnant==	0:25
allocat==ed	0:25
position==	0:20 3:17 41:-9
record :	0:24 3:16
: which	0:35 25:9
remnant	0:25
allocat	0:25
position #n	0:22 3:17 4:12 41:-10
job no	0:25 15:22 23:-9
kindly==	0:8 1:-8 2:11 5:8 11:33 17:14 28:17 33:24 36:9 40:12 57:11 60:15 61:13 62:15 63:-8 106:33 117:-10 122:9 124:29 125:-12
)~",
R"~(availabl==e	0:17 35:36 101:11
exceed==ing	0:17
kindly	0:8 1:-8 2:11 5:8 11:33 17:14 28:17 33:24 36:9 40:12 57:11 60:15 61:13 62:15 63:-8 106:33 117:-10 122:9 124:29 125:-12
^ kindly	0:9 2:22 11:34 17:14 21:8 28:18 33:24 36:9 40:12 57:11 60:15 61:17 106:33 117:-10 124:29 125:-12
availabl	0:17 35:36 101:11
exceed	0:17
ask==ing	0:10 28:8 29:10
reus==e	21:12
exist==ing	0:9 66:12
reus	21:12
exist	0:8 26:15 66:12 100:13 121:18
identify==	0:22 8:-21 22:31 39:-9
produc==ed	0:21 39:-8 71:10
identify	0:22 8:-21 22:31 39:-9
pleas identify	0:22 8:-21 22:31 39:-9
stock in	0:22 8:-21 22:31 39:-9
produc	0:21 39:-8 71:10
be produc	0:22 39:-8
suppos==ed	1:8 29:17
guitar==s	1:8 8:-16 9:20 11:11 12:33
i suppos	1:8 6:10 29:17
suppos to	1:8 29:17
any of	1:8 8:12 23:9 65:16
guitar	1:8 8:-16 9:20 11:11 12:33
piec with	36:-8 40:22 70:10
on it	0:-9 1:14 15:24 19:9 27:13 33:12 50:17 96:8 100:10 107:13
which groov	1:18
would wast	1:18
wast the	1:18
least of	1:18
small==	0:-8 1:9 7:19 42:16
rough==	1:9 3:9 39:11
small	0:-8 1:9 7:19 42:16
too small	1:10 42:16
small ,	1:10 42:16
end are	1:10 3:11
rough	1:9 3:9 39:11
still rough	1:10 3:11
could it	1:28
whereabout==s	1:67 50:-12
whereabout	1:67 50:-12
and whereabout	1:14
whereabout on	1:24
goe wher	1:17 2:9 40:-8
, whereabout	1:53 50:-12
whereabout $	1:44 50:-12
found this	74:10
was never	97:12
you'r==e	1:10 2:11 113:22 120:-11 121:13
^ whil	1:9 20:9 33:14
you'r	1:10 2:11 113:22 120:-11 121:13
^ now	1:8 21:9 32:12
now that	1:8 21:9 32:12
on that	0:-8 1:8 3:8 64:24
though==	1:13
though	1:13
a fair	1:10
bit off	1:10
which i	1:8 18:15
ye==	6:9 7:10 11:13 25:25 26:-9
ye	6:9 7:10 11:13 25:25 26:-9
would ye	6:9 7:10 11:13 25:25 26:-9
mate==	8:8 9:-10 12:10 19:19 20:-10 23:16 24:12 25:-8 27:9 31:17 35:12 38:17 47:-12 48:18 61:11 69:14 87:8 97:10 101:17 105:8 110:23 116:9 125:-14
mil==	1:9 41:28 69:18 70:-9 74:10 88:10
mate	8:8 9:-10 12:10 19:19 20:-10 23:16 24:12 25:-8 27:9 31:17 35:12 38:17 47:-12 48:18 61:11 69:14 87:8 97:10 101:17 105:8 110:23 116:9 125:-14
mate ,	5:8 27:13 29:17 30:-14 38:21 48:18 87:9 90:9 101:19 124:8
mil	1:9 41:28 69:18 70:-9 74:10 88:10
#d mil	1:9 88:10
job it	1:9
reckon==	9:19 18:39 39:14 41:26 51:9 60:10 64:13 66:8 69:11 70:-9 77:-8 92:10 94:9 104:16 106:11 114:14 125:-20
oughta==	1:15 11:19 51:9 64:17
someplac==e	1:15
reckon	9:19 18:39 39:14 41:26 51:9 60:10 64:13 66:8 69:11 70:-9 77:-8 92:10 94:9 104:16 106:11 114:14 125:-20
i reckon	1:15 41:28 70:-9
reckon piec	1:9 69:14
oughta	1:15 11:19 51:9 64:17
someplac	1:15
the piec	0:-14 1:13 23:10 37:24 38:10 40:15 69:20 70:19
in which	0:-12 7:19 10:-13 13:23 16:9 27:24 109:15
remainder of	1:8 21:12 110:20
it belong	1:8
finish ,	31:9 107:14
employ==ed	1:11 14:20 36:19 82:8 86:8
employ	1:11 14:20 36:19 82:8 86:8
be employ	1:11 86:9
employ $	1:11
indicat==e	1:26
indicat	1:26
to which	1:26 23:14
item #n	1:25 22:-8 23:20 33:40
tin should	1:26 5:-8 22:10
assign $	1:26 15:28
view==	58:14
view	58:14
and which	13:10 14:30 17:-11 25:12
bar i	2:10 5:-8 44:10
hardly==	2:12 51:9
i push	2:9 16:8 75:10
hardly	2:12 51:9
cut again	2:21
fewest==	2:11
and they	41:15 45:9 116:15 120:11
they are	70:14 71:8 72:11 80:9 113:20
fewest	2:11
the fewest	2:8
groove==s	13:24 18:20 70:8 71:18 74:8 103:10 107:10
groove	13:24 18:20 70:8 71:18 74:8 103:10 107:10
the groove	18:21 70:12 74:9 82:-12 107:11
noth in	13:25
in them	13:25
can get	120:12
plan ,	2:21
which i'd	2:9 29:21 125:-10
be laid	2:9 17:12
them are	2:9 25:13
half the	84:11
so what	4:15 16:14 32:10 33:21
the best	2:26 75:-11
best way	2:13
way to	2:13 9:-10 31:37
calliper	41:64 92:-9
the calliper	41:45
redistribut==e	2:11
a minut	2:10 32:11
minut ,	2:10 32:11
redistribut	2:11
never had	2:10 35:21
had #n	2:11
so ther	5:13 93:11 98:8 99:15
how'd==	2:10 16:21
em==	2:9 95:21 122:10
^ them	81:10
how'd	2:10 16:21
em	2:9 95:21 122:10
' em	2:9 95:21 122:10
em down	2:10
so we	2:9 68:15
the most	2:10 24:13 55:10
most $	2:10 24:13
help==s	2:11
plac so	2:9 75:10
only a	27:14
manner==	16:9
newly==	41:-8 72:-10 78:22 95:19
manner	16:9
which manner	16:9
newly	41:-8 72:-10 78:22 95:19
wish==	2:9 55:19 110:35 111:-9
@job i	2:9 71:18 94:12
wish	2:9 55:19 110:35 111:-9
i wish	2:9 55:19 110:35 111:-9
wish to	2:9 55:19 110:35 111:-9
measur ;	2:12 75:-11
them the	2:12 25:8 75:-11 79:11
let==s	2:14
gander==	2:14 45:10 98:19 115:16
gander	2:14 45:10 98:19 115:16
help of	2:14 80:11
rearrangement==	2:29
minimise==s	2:29
remake==s	2:29
rearrangement	2:29
minimise	2:29
remake	2:29
provid==e	2:28 12:21 17:19 27:10 33:33 35:31 83:-8
redistribution==	2:29
consider==ed	2:29 22:12
unfill==ed	2:29
provid	2:28 12:21 17:19 27:10 33:33 35:31 83:-8
kindly provid	2:28 17:21 83:-8
provid the	2:28 27:10 33:33 35:32
redistribution	2:29
, also	2:28 14:8 31:9
consider	2:29 22:12
unfill	2:29
relocat==ed	75:8
relocat	75:8
made for	85:13
bad==	3:26
bad	3:26
spac==e	1:-8 3:10
and you	1:-8 3:10 53:11
spac	1:-8 3:10
edge ,	1:-8 3:10 92:9
so will	18:9
calliper==s	41:64 92:-9
anyhow==	3:10
the gap	3:9 91:30
anyhow	3:10
#n do	0:-8 3:11 114:17 125:-15
, y'all	0:-8 11:19 44:11 78:12 117:8
y'all think	0:-8 3:9 30:11
or must	3:14
must it	18:11
; is	3:15
, hav	3:12 43:19
, stay	3:12 24:19
permit==ted	58:14
a length	3:-12 41:51 78:-11 92:-8
: is	29:21 125:-9
permit	58:14
toleranc==e	3:18 41:-9
toleranc	3:18 41:-9
confirm==	3:9 26:8 43:16 76:-8 93:28
confirm	3:9 26:8 43:16 76:-8 93:28
quantity==	3:17 5:16 21:8 23:10 121:18
quantity	3:17 5:16 21:8 23:10 121:18
measur at	3:16 41:-11 42:-8 76:9
@job .	3:10 43:19 73:-11 84:51 113:17
do all	4:18 27:-13 103:11
line==s	4:12 32:-9
not know	4:12 32:-9 35:10
they want	4:12 32:-9
a list	4:32 12:29
so could	4:9
big==	4:11 16:-11 44:17 50:16 67:-13 99:15 101:-8
rang and	4:11
to know	4:9 11:9 13:23 29:16 125:-10
big	4:11 16:-11 44:17 50:16 67:-13 99:15 101:-8
so how	4:9 8:16 13:17 16:11 35:16
tea==	4:16
tea	4:16
the tabl	4:16
long has	86:10
depend==s	0:-11 4:24
depend	0:-11 4:24
specification==	4:28
pleas send	4:27 11:9 26:23
send me	4:27 26:23
specification	4:28
requir==e	4:13 6:9 14:20 27:15
requir	4:13 6:9 14:20 27:15
, position	4:13
dimension==s	0:-19 4:25
dimension	0:-19 4:25
record for	0:-22 4:24 17:21 33:18 58:14
saw from	5:11 71:19
up and	5:10 102:17
not allow	23:26 125:-8
allow to	23:26 125:-8
make for	0:-8 5:15
stuff $	5:11
bit ,	22:37
from them	82:9 121:16
alon ,	5:34
together ,	5:19
that take	27:14
for everybody	5:8 88:10
next to	5:13 41:-10 92:15
outta==	5:13
outta	5:13
and no	120:10
go with	5:9
, mate	1:-14 8:8 9:-10 12:10 19:20 20:-10 23:21 24:12 25:-8 27:9 28:8 31:17 35:12 47:-12 48:18 61:11 69:15 87:8 97:10 101:17 105:8 110:23 116:9 125:-13
divid==ed	5:36 70:23
smallest==	5:18 121:21
divid	5:36 70:23
smallest	5:18 121:21
the smallest	5:18 121:21
separat==ed	5:27
separat	5:27 60:10
@job of	5:27 11:-9 13:14 36:18 47:13 65:13 70:-21 82:18
prepar==e	5:9
allocation==	5:9
sourc==e	5:8 6:18 73:15
prepar	5:9
the material	5:9
allocation	5:9
@job instrument	5:9 11:14 17:12
sourc	5:8 6:18 73:15
percent $	5:25 29:-12
new stock	2:-12 5:15 71:19
, kindly	2:-12 5:15 42:8 62:17 122:11
consum==e	5:18
consum	5:18 36:10
as littl	5:17 9:-8 121:16
paper==	6:28
ruler==	6:18 16:-11 17:10 89:12
paper	0:-8 6:28 7:19
the paper	6:19
ruler	6:18 16:-11 17:10 89:12
the ruler	6:19 89:12
sheet==	5:-8 6:60 121:15
tell==s	6:13
sheet	5:-8 6:60 121:15
printer==	6:9
printer	6:9
the printer	6:9
so let	6:10 49:8 55:17 61:11 80:-8 103:9
me have	6:10
her ,	60:13
run off	7:10
soul==	6:10
give us	6:10 51:9
like a	6:8 26:10 83:9
a good	6:10 51:9
soul	6:10
soul $	6:10
i would	13:23 15:13 16:-8 19:10 26:10 27:8 49:10 55:19 85:16 88:-10
copy==	6:10
i requir	6:10 14:21
copy	6:10
box==es	7:23 120:12
box in	7:13 117:11
tag==s	7:17
compartment==s	7:17
tag	7:17
compartment	7:17
paper==s	0:-8 7:19
one have	11:8
whil the	12:8
#n mil	41:28 70:-9 74:10
instruction==s	7:8 26:-8 35:36
instruction	7:8 26:-8 35:36
the instruction	7:8 26:-8 35:36
instruction for	7:8 26:-8 35:36
left and	8:9 66:8
left ,	8:17
many $	8:19 9:-8 25:24
ring==s	8:11 113:11
the phon	8:11 47:12 108:15
sinc i	8:10 26:9
both $	8:10 29:20
)~",
R"~(so tell	29:11
@wire ther	19:8
it look	17:11
plac at	8:9 14:32
what'v==e	8:15 11:10 14:10
what'v	8:15 11:10 14:10
^ what'v	8:15 11:10
what'v we	8:15 11:10
mate $	1:-11 5:-8 8:9 9:-8 12:12 17:8 19:20 20:-9 23:22 24:13 28:10 29:-20 30:20 31:18 35:17 47:-11 61:11 69:16 97:11 105:10 110:24 116:9
^ y'all	8:11 26:12 30:10 58:9 100:12 111:17 119:15
got any	8:11
possess==	8:15 9:-11 99:15
possess	8:15 9:-11 99:15
we possess	8:15 9:-11 99:15
stor==e	8:28
us in	8:23 21:8
stor	8:28
rod==s	116:15
are exist	66:12
current==	8:28 12:-8 13:19 14:16 20:18 21:8
inventory==	8:28 53:17 66:33
figure==s	8:29
pleas give	8:28 13:18 25:13 83:-12 84:17
current	8:28 12:-8 13:19 14:16 20:18 21:8
the current	8:28 13:20 20:18 21:8
inventory	8:28 53:17 66:33
figure	8:29
what quantity	23:10
quantity of	23:10
insuranc==e	8:10
content==s	8:10
insuranc	8:10
content	8:10
@wire going	9:8 39:15
last us	9:18
for how	8:-18 9:33 19:22
gone and	42:14 78:-10
last==s	9:22 27:8 98:15
out like	72:9
such==	11:-8 12:33
such	11:-8 12:33
so when	28:11 29:11
reckon $	9:20 41:28 70:-9
get==ting	13:20 29:-8 32:9 51:10 101:8 125:-8
through ,	53:11 111:17 112:-8
be get	32:10
the wee	3:-17 9:8 13:15 15:10 20:-8 23:29 41:20 45:10 67:9 94:11
us ,	9:8 19:10 20:-9 45:10 49:8 58:16 62:10 75:8 100:11 120:15
suffice==s	9:15
suffice	9:15
refretting==s	9:12
refretting	9:12
sort ,	9:12 11:9
must #n	9:12 10:12
coverag==e	8:-10 9:28
express==ed	8:-10 9:28
coverag	8:-10 9:28
express	8:-10 9:28
by which	9:15 33:15
in what	9:15 32:8
and from	10:13 19:9
which shop	32:12
order==ing	10:24
day and	10:11 14:11 81:10 120:10
phon in	57:14
bank==	10:10 43:17
bank	10:10 43:17
the bank	10:10 43:17
as i	13:12 51:9
gonna==	10:11 83:12 111:17 119:15
gonna	10:11 83:12 111:17 119:15
like $	10:14
the thing	10:10 57:20 84:11
thing to	10:10 85:13
like ,	10:10
issu==e	10:26
purchas==e	10:26 19:8 116:13
total==s	10:26
price==s	10:26 19:16
issu	10:26
purchas	10:26 19:8 116:13
with supplier	10:26 19:23 23:-8
price	10:26 19:16
csv==	10:18
account==s	10:18
csv	10:18
account	10:17 20:19 40:29 120:10
they were	95:13 96:-9 97:12
which guitar	11:11 12:34
guitar and	11:11 12:34
man==	11:25 29:-19 30:14 81:10 121:14
man	11:25 29:-19 30:14 81:10 121:14
the man	11:25 29:-18 30:12
home ,	48:13
dentist==	11:9 110:10
be at	28:-12 29:11 111:20
dentist	11:9 110:10
the dentist	11:9 110:10
customer==s	11:14 12:25
to customer	11:15
sister==	11:9 58:16 59:13
patient==	11:9
sister	11:9 58:16 59:13
and she	11:8 58:12 61:11 63:11
patient	11:9
is get	51:10 101:8
morrow==	11:11 12:-9 28:33
all due	11:24
morrow	11:11 12:-9 28:33
the morrow	11:11 12:-9 28:33
ye know	11:14 25:25 26:-9
fall==ing	11:20
behind that	11:19
we oughta	11:19 51:9
been done	11:19 33:14
y'all $	11:19 44:11 117:8
become==s	29:28
become	29:28
summaris==e	11:9 13:31 17:49
summaris	11:9 13:31 17:49
promis to	11:11 23:10
item==s	11:42 81:17
kindly report	11:41 21:12
job that	12:13
look after	15:10 45:18
try==ing	12:8 35:18
try	12:8 35:18
try to	12:8 35:18
the kettl	29:11
notic==e	28:-8 29:-9 37:16 111:22
holiday==s	110:19
notic	1:-8 28:-8 29:-9 37:16 39:12 111:22
book at	12:13 26:17
poor==	109:10
to her	65:9 110:15
her name	58:12 61:11
name ,	58:16
poor	109:10
open at	12:17 52:8
that are	31:19 82:9
which are	25:16 32:17
are they	25:16 32:17
the colleagu	12:17
colleagu @person	12:17
pleas provid	12:21 27:11 33:33 35:31
, earliest	12:25 30:32 58:-9
currently==	12:10 23:45 25:20 29:-8
ms==	12:12 15:27 27:-9 29:25 33:10
currently	12:10 23:45 25:20 29:-8
assign to	12:13 27:-8 30:8 64:13
ms	12:12 15:27 27:-9 29:25 33:10
to ms	12:13 27:-8 30:8
ms @person	12:12 27:-8 29:25 33:12
status $	13:75 25:13 62:16
certainly==	13:18
certainly	13:18
ask ,	13:17 29:12 40:16
his #n	13:18 18:15 48:9
hear==	13:13 25:13
hear	13:13 25:13
are with	13:13 96:10
fill==	13:12
me in	13:12 96:8 108:16 110:10
done and	13:11 33:14
wee @job	11:-12 13:9 15:10 23:24 26:27 94:11
report on	13:20 33:16
outstand==ing	13:33 17:18 31:15
outstand	13:33 17:18 31:15
here and	117:11
name==s	14:39
fix==ing	14:11 17:10 49:11 107:14 120:8
so who	14:11 28:9
card==s	14:8
the retir	63:24
retir one	14:28 62:8
workshop==	14:29 25:16 52:8 53:19 63:24
workshop	14:29 25:16 52:8 53:19 63:24
the workshop	14:14 25:18 52:8 53:20 62:8
workshop $	14:16 62:-10 63:28
which person	14:14 33:15
workshop ,	14:13 25:17
hous==e	14:8 57:13 65:17 120:20
hous	14:8 57:13 65:17 120:20
the hous	14:8 120:20
also thos	14:8 31:9
person ,	14:8 60:10 65:23
personnel==	14:35
role==s	14:35
personnel	14:35
show==ing	14:16
archiv==e	14:20 57:27
archiv	14:20 57:27
string ,	15:11
unless==	15:13
unless	15:13
somebody has	15:13
it already	15:13 107:14
phone==s	15:10 29:-9
phone	15:10 29:-9
will ,	15:10 16:-11 29:-9 44:12
put him	15:10 29:-9 58:16
through to	15:10 29:-9
for his	15:9 23:13 26:8 29:-9 30:8
look==ing	4:-10 13:51 15:9 36:14
do y'all	9:-10 15:11 27:22
himself==	15:13
himself	15:13
himself with	15:13
on which	15:13 28:21
responsibl==e	15:26 23:-8 64:27
responsibl	15:26 23:-8 64:27
member==	15:27 58:8 60:12 62:18
member	15:27 58:8 60:12 62:18
member of	15:27 58:8 60:12 62:18
of staff	15:27 25:-12 29:17 58:8 60:12
metal==	16:22 17:-11 89:20 95:-8
sleeve==s	16:15
and my	16:15
sleeve	16:15
although==	29:11
although	29:11
^ although	29:11
, becaus	16:9 19:8 76:10 91:10
group==s	16:10
insid==e	16:10
press off	16:9 100:9
off me	16:10 101:10
me see	16:8 31:10
see all	16:8 31:10
insid	16:10
befor $	16:10 43:23 107:-9 115:17
wrot==e	16:12 24:9 69:13 125:-8
nobody ever	16:12
wrot	16:12 24:9 69:13 125:-8
it #d	1:-9 16:12 69:44
^ how'd	16:22
direction==	16:11
direction	16:11
the full	16:22 33:34
n==	16:12
n	16:12
appli==ed	18:9 96:19
appli	18:9 96:19
the side	23:23
the thin	89:12
too high	17:8 97:20
i've been	35:17 64:24
call @person	59:15
and look	107:17
odd==	17:11
it up	17:11 65:8 124:8
odd	17:11 39:-9 79:31
so is	17:11 23:8 25:13
fix to	17:10 49:11 120:9
as next	17:12 23:-10 29:13
next ,	17:12 23:-10 29:26
finding==s	17:53
finding	17:53
deviat==e	17:12
deviat	17:12
@job or	18:23
groove on	18:10 107:11
properly==	18:11
properly	18:11
i hammer	77:23
time ,	16:-10 18:8 21:13 27:51 53:8 54:12 65:14
deep in	16:-9 18:8 74:13
middl ,	16:-9 18:9 94:10
had the	18:9 23:8 62:11
brass'll==	18:40
^ reckon	1:-16 18:39 39:14 51:9 60:10 64:13 66:8 69:11 92:10 94:9 104:16 106:11 114:14 125:-19
brass'll	18:40
sit right	90:11
@job wee	26:29
them slot	43:-12 108:17
and to	18:10 23:14
appropriat==e	18:19
depth of	18:10 74:8
appropriat	18:19
verify==	18:19
compatibl==e	18:19
verify	18:19
compatibl	18:19
specifi==ed	18:9
specifi	18:9
suitability==	18:11
suitability	18:11
get wire	19:8 120:12
lot ,	19:31
wonder==ing	19:9
batch==	19:9 73:26 111:11
wonder	19:8 118:9
batch	19:9 73:26 111:11
ther were	66:11 82:14
how high	8:-10 19:23
hand on	19:10 64:24
each time	19:10 121:16
i never	32:11
@wire we'v	67:15 68:-8
were the	19:11 20:10
good==s	19:24 23:-8 120:10
pleas list	19:22 23:39 31:14
good receiv	19:24 23:-8
audit==	4:-10 19:9 33:61
audit	4:-10 19:9 33:61
the audit	4:-10 19:9 33:61
: from	19:9 75:14
last month	20:26
whol year	19:-9 20:33 21:-11
answer==	35:22
@person ask	88:10
ask me	88:10
someth about	33:16
answer	35:22
whil i	20:9 43:17
glue ,	20:9
of october	20:21
last of	20:9
than we	69:14
think ,	124:8
this year	21:14
gone this	20:15 110:10
month ,	20:19 63:10
out==s	20:17
year ,	53:16
retain==ed	37:16
retain	37:16
coming==s	20:16 21:-8
going==s	20:16 21:-8
coming	20:16 21:-8
produc the	71:10
reconciliation==	20:24
reconciliation	20:24
current year	20:23 21:8
account==	20:19 40:29 120:10
the person	20:18 60:10 62:23 63:-12
#n october	20:19 33:11
sav ,	21:47 40:11
auld==	21:14
auld	21:14
remainder==s	21:13
save in	20:-8 21:25
attributabl==e	21:9 91:21
the saving	21:24
attributabl	21:9 91:21
attributabl to	21:9 91:21
annual==	20:-8 21:14 32:13 53:17 124:36
reclaim==ed	21:15
annual	20:-8 21:14 32:13 53:17 124:36
the annual	21:15 53:17
report ,	21:15 124:8
reclaim	21:15
nobody will	22:14 40:16
is been	22:13 33:8
lying in	22:14
and nobody	22:12 40:15 81:11
touch it	22:14 101:21
junk==	22:47 39:-9
junk	22:47 39:-9
)~",
R"~(van==	118:9
van	118:9
of ,	122:16
not touch	87:8 101:21
in our	22:12
be consider	22:12
for clean	22:11 27:16
for somebody	23:56
somebody $	23:33
for anyon	23:16 38:9
, whos	15:11 23:24
grab==	105:11
i grab	105:11
grab the	105:11
the wrong	60:13 69:11
finger==s	23:8
finger	23:8
whom is	23:13 26:12
somebody ,	23:23 58:12 100:10
me pleas	23:23 124:35
forc==e	23:46
all reservation	23:45 84:32
forc	23:46
material==s	11:-8 13:-9 23:50 83:17
earmark==ed	11:-8 13:-9 23:53
earmark	11:-8 13:-9 23:53
behalf==	23:14
behalf	23:14
you have	10:-13 24:14 27:26 33:16 121:16
to push	24:14 85:13
remember==	24:9 33:16 59:15 125:-10
remember	24:9 33:16 59:15 125:-10
we wrot	24:9 69:14 125:-8
whenever it	51:9
on us	45:11
sprung back	17:-10 24:41
arrang	115:23
onward==	24:15
remain==s	24:15 53:23
onward	24:15
it happen	124:8
happen ,	33:30
record==ed	24:14 33:19 69:10 99:18
record as	24:14 99:18
statistic==s	24:13
seat ,	24:13 104:14
to our	24:13 62:-10 63:28
statistic	24:13
sand==ing	0:-9 25:22 46:-8 101:12 102:9 103:12 105:11 106:14
the sand	0:-9 25:22 46:-8 101:14 103:12 105:11
grind==ing	25:13
grind	25:13
that should	25:13
visitor==s	25:13 28:8
visitor	25:13 28:8
round ,	25:13 28:10
banjax==ed	25:11 86:9
banjax	25:11 86:9
them sander	102:17
sander we	25:10 99:15 106:17
on them	25:8 43:-11 108:17
the now	25:8 67:9
function==	25:19 35:17
they and	25:17 32:18
they all	25:19 45:10
function	25:18 35:54
function $	25:18 35:54
and its	25:13 78:8
operational==	25:21 102:22
operational	25:21 102:22
insurer==	25:9
operat==e	25:9
insurer	25:9
operat	25:9
any machin	26:16
booking ,	17:-8 26:11 106:11
mine ,	12:27 26:11
for noth	77:23
lovely==	26:9 36:14 61:14 68:11
lovely	26:9 36:14 61:14 68:11
forget ,	16:-11 26:9 44:12
i told	26:8 33:16 47:13 124:8
told @job	26:9 47:13
if somebody	27:14
ther was	91:12
com ,	26:16 119:11
you know	26:16 36:14 101:-11 102:11
machine for	26:14 100:9
book ,	26:11 32:12 66:-10 69:19 106:10
exist==	26:16 100:13 121:18
what time	26:8 28:34
time book	26:8 113:11
calendar==	26:22 35:-8
calendar	26:22 35:-8
completely==	10:-13 27:26 114:11
completely	10:-13 27:26 114:11
stage ,	27:49
^ refret	27:11 30:27
i've never	35:21
the dress	27:14 107:-14 108:22
involv==e	27:16 30:-13
involv	27:16 30:-13
figur==e	9:-11 27:22 69:19
figur	9:-11 27:22 69:19
for bend	9:-10 27:22 98:21
partial==	30:18
partial	30:18
a partial	30:18
partial work	30:10
are to	81:17 83:17
new fingerboard	27:10
standard==	27:12 99:-10 104:12
standard	27:12 99:-10 104:12
the standard	27:12 99:-10 104:12
duration==	27:27 99:-12 104:36
round==ing	27:26 103:11 104:22
duration	27:42 99:-12 104:36
duration of	27:27 99:-12 104:36
of round	27:27 104:22
round the	27:26 43:17 103:11 104:21
apply==	112:13
apply	112:13
partial refret	27:-8 30:8
expect==ed	27:15 31:15
duration==s	27:15
with expect	27:15 31:15
open ,	12:27 28:67 54:-21 112:-13
cake==	61:14 108:22
cake	61:14 108:22
cake ,	108:22
if @person	28:10 29:-8 30:20
not in	28:9 55:19 110:19 113:20 125:-9
she work	28:10
agre==e	28:10
plumber==	28:9 77:21
plumber	28:9 77:21
the plumber	28:10
fetch==	28:12 47:14
children==	28:13
fetch	28:12 47:14
children	28:13
on and	28:18 29:-10 107:17
and knock	28:18 29:-10 95:29
knock off	28:18 29:-10 108:10
payroll==	26:-10 28:15
payroll	26:-10 28:15
be doing	29:26 122:10
, machine	29:34
date ,	29:61 47:36
enough ,	29:12 91:12
gonna be	29:9
be free	29:9 60:15
it ready	29:29 99:12
capacity==	25:-12 29:18
utilisation==	25:-12 29:18
capacity	25:-12 29:18
utilisation	25:-12 29:18
remain==ing	29:21 117:9 118:-8
a @job	46:10 85:-8
chang ,	30:10
brand==	71:19
brand	71:19
a brand	71:19
brand new	71:19
get it	30:13 32:12 99:12
earliest $	30:38 58:-9
day i	55:20
could promis	30:12
is bound	29:-9 30:9
suppos==ing	30:9
, sinc	20:-9 30:9 33:13
love==	91:10
love	91:10
all have	33:15
fella==	58:16
fella	58:16
hope==	30:23 47:-11
hope	30:23 47:-11
fingerboard of	87:17
quot==e	27:-8 30:19
quot	27:-8 30:19
an additional	30:11
fret .	72:9
the one	31:10 41:-10 44:14 71:19 75:-10 92:15 105:-8
turn==ing	31:22 89:12
them in	32:11 72:19 78:-8
they take	32:11 120:11
believ==e	32:11
believ	32:11
believ it	32:12
the address	32:12
mob==	32:17
mob	32:17
@wire off	32:16 116:11
house==s	32:22
punctual==	32:22
house	32:22
punctual	32:22
of lindwurm	32:13
to it	33:10 41:-10 92:15
forgotten==	33:25
forgotten	33:25
happen $	8:-8 33:42 124:8
notic==ed	1:-8 39:12
notic ,	28:-8 29:-8 111:22
told you	33:16 124:8
activity==	33:35
activity	33:35
trash==	4:-10 33:61
trash	4:-10 33:61
entir==e	33:13 83:11
entir	33:13 83:11
document==	33:40
transaction==	33:40
concern==ing	33:40 48:10
document	33:40
transaction	33:40
concern	33:40 48:10
themselve==s	35:10
themselve	35:10
sort==s	35:22
told me	45:10 64:11 101:-8 102:11 110:12
you could	59:-11 60:14
sort of	35:22
of thing	35:22
befor ,	35:21 62:-8 63:13
@quoted	13:-8 26:-8 35:96
the @quoted	35:37
goe ,	35:19 67:10
&@quoted	13:-8 26:-8 35:96
used $	35:23 82:14
explanation==	35:30
need an	35:29 104:12
explanation	35:30
function==s	35:37
guidanc==e	35:18
guidanc	35:18
pack ,	32:41 120:-11 121:-9
. job	37:16 71:23
sit==ting	36:14 90:9 92:11
is just	36:15 121:14
is wher	36:14 61:10
@wire nobody	36:14 80:9
, well	36:14 99:11
record that	36:17 43:-9 62:18 96:16 107:20
that piec	36:29
consum==ed	36:10
pleas note	36:9 53:17 76:10 87:11 95:14 96:-9 97:12 108:34 110:19
the bit	37:9 38:11 83:17
call #n	37:8 73:25
so nobody	0:-9 37:9 83:10 101:12
grab it	37:9 42:20
pleas put	37:15 55:23
. @job	37:28 48:27 83:46 84:-8
and somebody	68:15
so keep	83:15
^ mind	37:10 105:11
pleas to	37:11 40:13 60:10 83:19 98:15 100:-9 102:12 122:12 124:35
to reserv	37:11 83:19
hour the	37:14 101:15
by me	37:14 107:14
be reserv	37:16 83:17
further==	37:16
further	37:16
until further	37:16
further notic	37:16
notic $	37:16
be sav	38:10 83:10
. nobody	38:9 65:20
turn==s	102:9
^ turn	84:21
so give	38:10 84:11 106:15 115:18
worry==es	38:22
worry	38:22
pleas take	32:-8 38:23 40:-8 72:19 100:8 122:12
upon==	38:15 94:12 114:24
hereby==	38:15 64:13 84:33 112:23 118:-10 119:23 124:30
effectiv==e	38:16
upon	38:15 94:12 114:24
hereby	38:15 64:13 84:33 112:23 118:-10 119:23 124:30
is hereby	38:15 64:13 112:23 118:-10 119:23 124:30
hereby lift	38:16 84:33
effectiv	38:16
drop it	39:10 100:26
now in	39:12 75:14
@wire .	1:-9 39:23 51:9 81:19
. #d	1:-9 39:25 42:10 74:24
so here	1:-8 39:11 67:10 88:10
me with	39:15 107:14
y'all can	1:-9 39:15 100:13 119:15
enter==	39:15 109:11
pleas enter	39:15 109:11
originat==ing	39:10
kindly add	39:9 98:12
item of	39:9 81:17
originat	39:10
it doe	42:20
not go	91:12
rubbish==	36:-8 40:22 72:-8 78:21
rubbish	36:-8 40:22 72:-8 78:21
the rubbish	36:-8 40:22 72:-8 78:21
rubbish $	36:-8 40:22 72:-8 78:21
so out	40:11 81:11
i @day	40:16
not ask	40:16
banjax ,	86:9
ai==	40:24 43:-12 65:12 86:9 108:16 109:15 119:14 125:-13
lick==	40:24 83:12 97:13
that old	40:24 60:10
ai	40:24 43:-12 65:12 86:9 108:16 109:15 119:14 125:-13
ai not	40:24 43:-12 65:12 86:9 108:16 109:15 119:14 125:-13
lick	40:24 83:12 97:13
a lick	40:24 97:13
therefor==e	40:16
therefor	40:16
remov from	32:-10 40:15 72:18 86:10 122:15
tin the	40:16 72:19
correction==	40:30 69:-12
on account	40:29
account of	40:29
correction	40:30 69:-12
dispos==e	40:21 81:16 82:-11
discard==ed	40:21 81:17
dispos	40:21 81:16 82:-11
dispos of	40:21 81:16 82:-11
discard	40:21 81:17
show==ed	41:15 117:8
i held	41:15 70:11 75:-8
groov #n	41:19 75:20 89:-11
measur it	41:12 72:-8 78:21
finally==	41:20 58:13
finally	41:20 58:13
i finally	41:20
finally got	41:20
the good	41:20 67:10 89:15
&#d#n@person	41:20
dot==	41:28 70:-9
dot	41:28 70:-9
the record	41:17 68:11 69:11
found to	41:17
short .	42:12
so fret	96:8
grab==bed	42:20
shy==	42:20
and now	42:20 63:10 94:11
shy	42:20
and made	42:15 78:-10 82:9
^ well	48:13
becom==e	82:14 84:14
short has	85:10
becom	82:14 84:14
regret==	77:28
regret	77:28
them out	43:11
coffee==s	43:19
took me	43:16 94:11
all morn	29:-8 43:18 105:33
coffee	43:19
that stag	43:17 103:9
with them	43:10 72:9
hallelujah==	43:23
am all	43:22 60:13
hallelujah	43:23
terminat==ed	43:40
)~",
R"~(terminat	43:40
commenc==ed	43:9 107:46 108:-8
this is	43:18 59:15
confirm that	43:16 93:28
commenc	43:9 107:46 108:-8
squash==ed	16:-10 44:18
squash	16:-10 44:18
big press	16:-10 44:18 99:15 101:-8
one from	44:14
pig==	65:16
pig	65:16
a pig	65:16
but fret	70:-9 71:11
, grand	82:10
newton	55:17
yesterday the	44:10 78:34
stay==ed	45:18
me and	45:10 110:10
and would	101:-8 102:11
would not	101:-8 102:11
not you	101:-8 102:11
devil==	109:10
devil	109:10
come up	45:18
carri==ed	45:12
carri	45:12
was carri	45:12
carri out	45:12
were found	45:13 74:10
reinspection==	115:23
observ==ed	82:-9 90:11
^ upon	94:13
reinspection	115:23
reinspection of	115:23
observ	82:-9 90:11
#c long	46:10 50:25 85:-9
bridg ,	46:10 85:-8
nut and	46:18 85:-8
&#c#n#o@job@wire	46:11 85:-8
#n wide	46:9 76:-8 85:28
new #n	72:-8 78:33
. @wire	72:9
so put	58:14 64:12 68:-8 69:16
reckon we	51:9 106:12
lady==	47:18 121:15
lady	47:18 121:15
the lady	47:18 121:15
dec $	47:36 116:18
wed==ding	111:17
bless==	118:13
wed	111:17
bless	118:13
, bless	118:13
we must	47:17 114:11
henceforth==	47:9 51:24
#n shall	65:22 113:13
henceforth	47:9 51:24
so take	48:10 60:9 100:9 112:10
struck==	48:10 100:19
so job	48:10 65:16
struck	48:10 100:19
be struck	48:10 100:19
and @job	48:12
it home	48:12 95:29
annull==ed	48:10 106:38 117:-11 119:13
annull	48:10 106:38 117:-11 119:13
is annull	48:10 117:-11 119:14
client==	48:32 125:-13
client	48:32 125:-13
request==	48:26
request	48:26
the round	88:12
round top	88:12
top is	88:12
so set	58:9 105:-8 115:10
wire nam	49:15
lowboy==	49:8 80:-8
a soft	49:8 80:-8
lowboy	49:8 80:-8
pup==	49:8
pup	49:8
for us	49:8 120:19
wee #d	49:8 88:9
are fix	49:11 120:9
larg==e	76:17
larg	76:17
depth $	49:13 88:-11
designat==ed	49:10 86:9
heritag==e	49:10
designat	49:10 86:9
heritag	49:10
typ==ed	60:13 124:15
typ	60:13 124:15
a tang	101:10
scal with	50:16 67:-10
spool and	50:15
in .	117:10
lindwurm van	118:9
land==ed	31:-13 50:21 117:24
micrometer==	50:15 88:20
land	31:-13 50:21 117:24
@wire land	50:21
micrometer	50:15 88:20
the micrometer	50:18 88:10
&#d#n@person@wire	50:18 68:11
got us	50:10
land ,	31:-13 117:28
#c mil	69:19
gram==	50:10 116:9 120:19
, begin	46:-8 50:29 105:12 117:-10
to no	50:29 65:16 117:-10
at a	103:10
less than	51:10 120:10
so count	77:9
count it	77:9
it as	77:9 107:11
zither==s	51:9
zither	51:9
as far	51:9
far as	51:9
shout==	51:9
lad==	51:9
shout	51:9
lad	51:9 103:18
lad $	51:9 103:18
order again	51:22 101:-8 102:11
again be	51:22 104:23
threshold==	51:11
pleas set	51:11 99:-11 104:14
threshold	51:11
be #d	51:23 74:10
a @day	52:15
so make	109:9 113:11
&#n#t@day	115:19
from half	109:12
half #n	52:9 109:12
folk==s	52:10 112:13
folk	52:10 112:13
, folk	52:10 112:13
can find	52:10 72:10 75:-8
open==ed	52:8 54:13
regular==	109:20
regular	109:20
shall be	43:-8 53:15 54:-9 58:13 61:25 65:22 113:13 114:22
be #t	54:-14 111:30
shut @day	52:-9 53:58 112:16 125:-9
xma==s	53:16
jan==	53:16
xma	53:16
jan	53:16
dig==ging	53:11
bicycl==e	53:11
^ they'r	53:10 101:14 118:10
bicycl	53:11
so @day	53:12
be shut	112:18
and not	53:11 55:19 108:20 125:-8
#o december	28:-9 53:12 54:21 110:18 117:8 118:-8
owing==	53:17 81:16 82:-11 118:-10 119:23
owing	53:17 81:16 82:-11 118:-10 119:23
owing to	53:17 81:16 82:-11 118:-10 119:23
they said	54:12 112:10
said we	53:-9 54:12 112:19
will open	54:10
, this	93:11 97:13
exceptionally==	111:47
exceptionally	111:47
additionally==	54:22
additionally	54:22
that down	55:9
program==	55:19 61:25 98:20
program	55:19 61:25 98:20
the program	55:19 61:25 98:20
@person new	55:16
think==s	55:17
newton==s	55:17
load in	55:17 75:15
yourself==	55:11
mm ther	55:11
yourself	55:11
dublin==	55:14
dublin	55:14
new==s	102:17
being ,	43:-11 108:17
name is	58:11 85:12
is lamp	115:18
http==s	56:14
exampl==e	56:14
bench .	100:17
exampl	56:14
. exampl	56:14
exampl /	56:14
pocket==	57:14
so add	120:11
her phon	57:14
pocket	57:14
you ever	106:11
porch==	57:19
porch	57:19
beacon==	56:14
beacon	56:14
webhook==	57:22
gong==	57:22
webhook	57:22
gong	57:22
must not	57:20 114:11
so pleas	100:11
remov that	100:17
that receiver	57:15
message==s	57:15
message	57:15
annoy==ing	57:14
annoy	57:14
plug==	57:19
plug	57:19
to delet	100:-8 122:13
delet $	100:-8 122:13
discontinu==e	57:15
discontinu	57:15 108:36
juri==	58:11
juri	58:11
and he	58:9 59:14
he work	58:9 61:10 111:8
katja==	58:16
katja	58:16
anyth ,	58:16 104:11 105:-8 118:9
minka==	58:13
minka	58:13
she going	58:12 61:12
join==ing	58:16
down as	58:16 62:11 64:11
as #n	58:16 99:18
loretta==	58:9
loretta	58:9
her up	58:9 91:11
is nam	98:21
about ,	79:11
error==	58:8 69:13 124:36
beatrix==	58:9
error	58:8 69:13 124:36
beatrix	58:9
bench and	58:9 77:10
user number	58:9 59:14 60:14
ignac==	58:14
ignac	58:14
computer==	59:13 60:12 69:18 83:10
call==s	59:15 89:10
computer	59:13 60:12 69:18 83:10
the computer	59:13 60:12 69:18 83:10
laptop==	59:14 60:10
laptop	59:14 60:10
associat==e	59:13
associat	59:13
advis==ed	101:15
be advis	101:15
advis that	101:15
pertain	77:12
pertain to	77:12
, forget	60:13 112:18 124:8
forget it	60:13 124:8
our shop	62:23 63:-12
part==s	60:10
part ,	60:10 88:9
thumb==s	60:13
i typ	60:13 124:15
thumb	60:13
unhitch==	59:-11 60:14
unhitch	59:-11 60:14
of user	60:34
from its	60:15
separat==e	60:10
valid==	53:-8 60:10 112:11
valid	53:-8 60:10 112:11
not valid	53:-8 60:10 112:11
valid anymor	53:-8 60:10 112:11
revok==e	60:19 112:13 124:33
assignment==	60:19
revok	60:19 112:13 124:33
kindly revok	60:19 124:33
revok the	60:19 112:13
assignment	60:19
association==	60:14
association	60:14
a member	60:14 62:18
watch==ing	61:12
@person been	61:11 98:11
watch	61:12
than i	61:12 70:-10 71:11
inset==	61:25 101:15
inset	61:25 101:15
amend==	61:17 99:14 121:11
tomislav==	61:18
amend	61:17 99:14 121:11
amend the	61:17 99:14
tomislav	61:18
the register	32:-10 61:17 100:9 122:15
register $	61:18 100:9
good and	62:13 63:-11
speech==es	62:11
officially==	62:11
pensioner==	62:11
speech	62:11
officially	62:11
pensioner	62:11
so she	62:12 63:10
definitively==	62:8 93:29
definitively	62:8 93:29
pleas record	17:-10 43:-10 62:18 73:15 93:16 96:16 107:20 116:13
employment==	62:17
employment	62:17
hav end	62:17 122:11
us again	63:17
the staff	63:24
was retir	63:10 102:14
she has	63:10 110:11
thank	68:15
return==ed	62:-10 63:28 65:33 125:-9
return to	62:-10 63:28 65:33 125:-9
previously==	63:16
previously	63:16
revers==ed	63:12
retirement of	63:12 83:11
revers	63:12
doing to	64:24 111:8
boyo==	64:19
boyo	64:19
reckon the	64:17
rest with	70:23
particular==	65:24
particular	65:24
in particular	65:24
^ ai	65:12 101:8
general==	65:33
general	65:33
rod of	66:8
and ther	66:9 87:8
and each	66:8 99:14
metr long	66:8 68:15
win==	66:11
were #n	66:11 82:14
i said	66:11 112:20
win	66:11
&#n@person@wire	66:11
reckon ther	66:9 94:10
went and	66:9 118:13
and measur	66:9
amount==s	66:14
yesterday in	66:14 82:8
physical==	66:33
yield==ed	66:33
physical	66:33
yield	66:33
borrow==ed	67:10
borrow	67:10
every stick	31:-13 67:14 68:-8 117:28
with ,	67:15 68:-8 85:13 114:30
&#c#n@person@wire	67:15 68:-8
wonder==	118:9
lie now	67:10 75:14
now the	67:10 94:11 118:22
establish==ed	91:25 92:20
establish	91:25 92:20
was establish	92:20
powder==	68:11
powder	68:11
thank==	68:15
near==	68:16 108:10
near	68:16 108:10
ston==e	0:-9 69:16 97:77
place==s	69:16 98:16
the ston	69:16 97:36
place	69:16 98:16
by #c	69:15 85:10 120:20
believe==s	69:18
believe	69:18
clerical==	69:13
clerical	69:13
follow==ing	69:11 75:15
remeasurement==	69:11
remeasurement	69:11
groove #n	70:8 71:18
leav on	110:36 111:-9
breadth==	70:11 75:-8
breadth	70:11 75:-8
did ,	70:11 99:11
that slot	77:20
apportion==ed	70:11
apportion	70:11
for groove	71:19 82:9
decent==	71:8
decent	71:8
unroll==ed	70:-9 71:11
unroll	70:-9 71:11
to ,	70:-9 71:11 88:10 101:-8 102:11
so they	2:-8 10:-9 71:8 116:9 122:15
wire i	5:-9 71:10 73:11
measur them	72:10 79:10
fret i	72:12 77:10
monster==s	72:9
monster	72:9
yank==ed	72:26
yank	72:26
extract==ed	72:10
extract	72:10
remov==ed	32:-13 72:19 86:9 122:28
former==	72:13
former	72:13
)~",
R"~(top==s	73:26 90:9 97:18 104:12
differ==	73:11
differ	73:11
will you	73:10 114:30
determin==ed	73:14
exclusively==	73:14
determin	73:14
was determin	73:14
exclusively	73:14
saw them	74:18
mil deep	74:10 88:10
a width	74:10 76:9
and have	74:10 81:9 115:18
a depth	74:9
was in	117:12
displac==ed	75:14
displac	75:14
respectively==	75:15
respectively	75:15
#n respectively	75:15
respectively $	75:15
that on	75:8
plan==ed	76:10
the fingerboard	76:17 87:17
mm larg	76:17
was measur	41:-11 76:9 92:8
hammer==ed	77:23
crown==ed	77:23
vacuum==	77:20
breakfast==	77:20
vacuum	77:20
breakfast	77:20
pretzel==	77:9
right on	77:9 90:11
pretzel	77:9
sign==	77:10
sign	77:10
overheat==ed	77:21
overheat	77:21
disappear==ed	77:18
probably==	77:18
disappear	77:18
probably	77:18
floor ,	77:18 101:11
pertain==ing	77:12
mislaid==	77:12
regard==ed	77:12 102:23
mislaid	77:12
regard	77:12 102:23
be regard	77:12 102:23
regard as	77:12 102:23
predecessor==	78:8
a newly	78:11
newly made	78:11
predecessor	78:8
y'all ,	78:12 102:17 111:17
was made	78:33 124:30
fret was	92:20
odd==s	39:-9 79:31
fistful==	79:11
fistful	79:11
all with	113:20
straight ,	94:12
number==s	70:-20 81:29 82:19 95:14 96:-9
dustbin==	81:17 82:-11
dustbin	81:17 82:-11
grandmother==	81:11
grandmother	81:11
nor==	81:10
them #n	81:10 121:8
nor	81:10
hon==	81:20
hon	81:20
surplus==	81:16 82:-11
surplus	81:16 82:-11
#n thing	82:14
i've the	82:10 96:8
drama==s	82:10
drama	82:10
all .	83:47 112:10
lick of	83:12 97:13
would $	83:12 112:20
the complet	83:9 84:19
complet material	83:9 84:19
foreseen==	83:18
foreseen	83:18
in full	83:18 117:12
pleas free	17:-8 84:14
other $	83:-10 84:20 92:12
iron==	85:16
iron	85:16
filler==	85:13
filler	85:13
call big	99:15 101:-8
bar with	86:10
bar designat	86:9
bent the	91:10
. for	114:16
hurt==s	108:16 118:13
hurt	108:16 118:13
we ai	86:9 122:8
be remov	32:-13 86:9 122:28
for alway	86:15 101:-8 122:12
its cradl	87:16
ascertain==ed	87:17
ascertain	87:17
micrometer ,	88:17
my micrometer	88:10
&#d@person@wire	88:10
note the	95:15 96:-9 110:20
squint==ed	89:16
squint	89:16
top of	90:9 97:20
, you	90:10 102:9
under them	90:10 95:14 96:-9
crown on	90:9 108:10
the groov	91:10 96:12
stay up	91:22
muck==	91:11
muck	91:11
incorrectly==	91:21
incorrectly	91:21
deeper==	41:-10 92:22
deeper	41:-10 92:22
deeper than	41:-10 92:22
fattest==	92:10
fattest	92:10
thousandth==s	92:12
thousandth	92:12
depression==	92:20
relativ==e	92:20
adjacent==	92:20
depression	92:20
relativ	92:20
adjacent	92:20
but she	106:20
there'==s	93:11
abov==e	93:11
there'	93:11
abov	93:11
ever gonna	119:15
follow==	93:17
terminate==s	93:29
terminate	93:29
got relief	94:63
evening==s	94:11
clamp==s	94:11
heat==	94:11
evening	94:11
heat	94:11
bow==	94:10
have made	94:12
upward==s	94:10
upward	94:10
examination==	94:13
exhibit==	94:13
examination	94:13
exhibit	94:13
pull '	95:11 122:10
withdrawn==	124:30
withdrawn	124:30
glue and	96:13
fasten==ed	96:9
fasten	96:9
adhesiv==e	96:19
adhesiv	96:19
rub==bed	97:12
rub	97:23
abrasiv==e	97:36
press was	44:-8 97:12 100:10 102:14
abrasiv	97:36
with abrasiv	97:24
rub==	97:11
sandpaper==	97:13
sandpaper	97:13
else on	97:13 99:12
levell with	97:23
individual==	97:12
individual	97:12
lobby==ing	98:11
corner==	98:21
summer==	98:11
lobby	98:11
spray corner	98:21
summer	98:11
at an	117:12
preparation==	98:24 99:14
preparation	98:24 99:14
category==	98:12
entitl==ed	98:12
unit==s	98:12
category	98:12
entitl	98:12
unit	98:12
you need	99:12 103:13
doorstep==	99:11
cousin==	99:11
press==es	99:11
doorstep	99:11
cousin	99:11
firewood==	99:15 100:11
firewood	99:15 100:11
pleas amend	99:14 121:11
scrapyard==	100:9
whistl==ing	100:9
scrapyard	100:9
whistl	100:9
delet it	100:27 103:-8
eras==e	100:13
not exist	100:13 121:18
exist anymor	100:13 121:18
eras	100:13
entirely==	100:18
entirely	100:18
permanently==	100:19
permanently	100:19
bust==	25:-17 101:69 102:-9
bust	25:-17 101:69 102:-9
year==s	101:10
knacker==ed	101:21
knacker	101:21
greas==ed	101:8
greas	101:8
unavailabl==e	101:15
throughout==	101:15
maintenanc==e	101:15
unavailabl	101:15
throughout	101:15
maintenanc	101:15
repair==ed	102:14
repair	102:30
sand machin	46:-8 102:9 103:13 105:11
mechanic==	101:-8 102:11
mechanic	101:-8 102:11
good new	102:17
repair==	102:16
so seat	103:21
gently==	103:11
gently	103:11
lad==s	103:18
need==ing	106:11
be need	106:11
board==s	103:15
necessary==	103:14 114:28
the tru	103:15 108:22
tru of	103:15 108:22
necessary	103:14 114:28
revert==	103:16
customarily==	103:16
revert	103:16
stag to	99:-11 103:16 104:14
customarily	103:16
guess==es	104:9
optimist==	104:9
optimist	104:9
referenc==e	105:11
referenc	105:11
&#n#t@person	105:11
she doe	106:19 109:-8 111:17
be cancell	106:17 119:10
pity==	107:14 111:17
, more	107:14 111:17
pity	107:14 111:17
the pity	107:14 111:17
pity ,	107:14 111:17
goggle==s	107:17
dangerous==	107:17
goggle	107:17
dangerous	107:17
fact==	107:15
fact	107:15
hurt $	108:16 118:13
break==ing	108:53
down==ed	108:17
halfway==	108:17
so i've	108:17
halfway	108:17
knock==ing	108:10
suspend==ed	107:-14 108:22
completion==	65:-8 107:-14 108:22 114:33 125:-8
suspend	107:-14 108:22
completion	65:-8 107:-14 108:22 114:33 125:-8
discontinu==ed	108:36
incomplet==e	108:36
incomplet	108:36
the early	109:8 110:-8 111:11
contractual==	52:-12 109:12
contractual	52:-12 109:12
attendanc==e	109:11
attendanc	109:11
parent==s	110:16
with my	110:16
parent	110:16
kill==ing	110:10
mammy==	110:15
mammy	110:15
sicki==e	110:27
sicki	110:27
absenc==e	110:20
ground==s	110:20
illness==	110:20
absenc	110:20
illness	110:20
normally==	111:18
normally	111:18
vet==	111:8
vet	111:8
&#n#t@day@person	111:9
contrary==	28:-8 29:-8 111:22
contrary	28:-8 29:-8 111:22
not shut	53:-13 112:24
announc==ed	112:23
announc	112:23
studio==	113:11
studio	113:11
practic==e	114:14
practic	114:14
defer==red	65:-8 114:33 125:-8
defer	65:-8 114:33 125:-8
commencement==	114:25
conditional==	114:25
commencement	114:25
conditional	114:25
bleary==	105:-8 115:10
bleary	105:-8 115:10
control==	115:19
control	115:19
arrang==e	115:23
telephon==ed	116:15
telephon	116:15
with lindwurm	50:-11 116:26 122:21
, lindwurm	116:18
to ferro	116:17
off lindwurm	116:20
, they'd	116:9 120:19
dozen==	116:11
dozen	116:11
the firm	116:10 122:13
, delivery	50:-10 116:10
puddl==e	117:11
puddl	117:11
invoic==ed	117:12
invoic	117:12
lindwurm has	118:12 119:10
inform==ed	118:8
inform	118:8
that order	118:8 119:14
bundl==e	119:10
bundl	119:10
&@person@wire	119:10
risen==	117:-10 119:15
risen	117:-10 119:15
delay==s	118:-8 119:24
kestrel==	120:12
kestrel	120:12
hobbin==	120:18
hobbin	120:18
fairman==	120:8
fairman	120:8
bayou==	120:10
bayou	120:10
furnisher==	122:16
furnisher	122:16
add==ed	120:20
moreau==	120:20
supplier must	120:20 122:10
moreau	120:20
minimum order	121:8
wirework==s	120:10
wirework	120:10
lindwurm :	120:-9 121:26
chang==ing	120:-11 121:13
music==	122:11
music	122:11
relationship==	122:11
relationship	122:11
oh==	124:9
oh	124:9
nope==	124:20
nope	124:20
sleev==e	124:8
hit==	124:8
sleev	124:8
preced==ing	124:30
preced	124:30
)~",
  };
  static const std::string whole = [] {
    std::string out;
    for (const char* piece : pieces)
      out += piece;
    return out;
  }();
  return whole;
}

} // namespace nutward::talk
