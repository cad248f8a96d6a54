#include "shop/lists.hpp"

#include <algorithm>
#include <array>

namespace nutward::shop {

namespace question_rows {
extern const Question fit, place, shift, all_right, slots, cuts, cut_list_question, labels, stock, supply,
    order_list, due, job, jobs, persons, whose, press_question, level_question, suits, lots, balance, saved,
    tin_care, safety, held, spring_back, machines, bookings, stages, hours_question, agenda_question,
    promise_question, orders_question, suppliers_question, history, not_understood, help;
}
namespace command_rows {
extern const Command use_row, hold_row, let_go_row, add_row, scrap_row, measured_row, came_short_row,
    finished_row, pressed_row, rechecked_row, new_job_row, set_due_row, cancel_job_row, define_wire_row,
    receive_row, reorder_level_row, open_hours_row, close_day_row, open_extra_row, set_row, add_receiver_row,
    drop_receiver_row, new_person_row, map_uid_row, unmap_uid_row, change_person_row, retire_person_row,
    return_person_row, give_job_row, free_job_row, count_row, weigh_row, calibrate_row, correct_row,
    cut_from_row, cut_new_row, pulled_row, from_lot_row, slot_size_row, shifted_row, board_width_row,
    lost_row, remade_row, handful_row, measured_handful_row, scrap_several_row, use_several_row,
    set_aside_row, let_all_go_row, define_bar_row, drop_bar_row, press_support_row, wire_size_row,
    reading_row, crown_gap_row, cause_row, stands_low_row, last_fret_row, neck_row, reseated_row, glued_row,
    levelled_row, define_machine_row, change_machine_row, drop_machine_row, machine_down_row, machine_up_row,
    stage_machine_row, stage_minutes_row, book_row, cancel_booking_row, start_row, stop_row, own_hours_row,
    day_off_row, day_on_row, reopen_day_row, priority_row, after_row, look_again_row, ordered_row,
    arrived_row, order_promised_row, cancel_order_row, define_supplier_row, change_supplier_row,
    drop_supplier_row, forget_not_understood_row, undo_row;
}

namespace {

constexpr std::array all_questions{&question_rows::fit,
                                   &question_rows::place,
                                   &question_rows::shift,
                                   &question_rows::all_right,
                                   &question_rows::slots,
                                   &question_rows::cuts,
                                   &question_rows::cut_list_question,
                                   &question_rows::labels,
                                   &question_rows::stock,
                                   &question_rows::supply,
                                   &question_rows::order_list,
                                   &question_rows::due,
                                   &question_rows::jobs,
                                   &question_rows::job,
                                   &question_rows::persons,
                                   &question_rows::whose,
                                   &question_rows::press_question,
                                   &question_rows::level_question,
                                   &question_rows::suits,
                                   &question_rows::lots,
                                   &question_rows::balance,
                                   &question_rows::saved,
                                   &question_rows::tin_care,
                                   &question_rows::safety,
                                   &question_rows::held,
                                   &question_rows::spring_back,
                                   &question_rows::machines,
                                   &question_rows::bookings,
                                   &question_rows::stages,
                                   &question_rows::hours_question,
                                   &question_rows::agenda_question,
                                   &question_rows::promise_question,
                                   &question_rows::orders_question,
                                   &question_rows::suppliers_question,
                                   &question_rows::history,
                                   &question_rows::not_understood,
                                   &question_rows::help};

constexpr std::array all_commands{&command_rows::use_row,
                                  &command_rows::hold_row,
                                  &command_rows::let_go_row,
                                  &command_rows::add_row,
                                  &command_rows::scrap_row,
                                  &command_rows::measured_row,
                                  &command_rows::came_short_row,
                                  &command_rows::finished_row,
                                  &command_rows::pressed_row,
                                  &command_rows::rechecked_row,
                                  &command_rows::new_job_row,
                                  &command_rows::set_due_row,
                                  &command_rows::cancel_job_row,
                                  &command_rows::define_wire_row,
                                  &command_rows::receive_row,
                                  &command_rows::reorder_level_row,
                                  &command_rows::open_hours_row,
                                  &command_rows::close_day_row,
                                  &command_rows::open_extra_row,
                                  &command_rows::set_row,
                                  &command_rows::add_receiver_row,
                                  &command_rows::drop_receiver_row,
                                  &command_rows::new_person_row,
                                  &command_rows::map_uid_row,
                                  &command_rows::unmap_uid_row,
                                  &command_rows::change_person_row,
                                  &command_rows::retire_person_row,
                                  &command_rows::return_person_row,
                                  &command_rows::give_job_row,
                                  &command_rows::free_job_row,
                                  &command_rows::count_row,
                                  &command_rows::weigh_row,
                                  &command_rows::calibrate_row,
                                  &command_rows::correct_row,
                                  &command_rows::cut_from_row,
                                  &command_rows::cut_new_row,
                                  &command_rows::pulled_row,
                                  &command_rows::from_lot_row,
                                  &command_rows::slot_size_row,
                                  &command_rows::shifted_row,
                                  &command_rows::board_width_row,
                                  &command_rows::lost_row,
                                  &command_rows::remade_row,
                                  &command_rows::handful_row,
                                  &command_rows::measured_handful_row,
                                  &command_rows::scrap_several_row,
                                  &command_rows::use_several_row,
                                  &command_rows::set_aside_row,
                                  &command_rows::let_all_go_row,
                                  &command_rows::define_bar_row,
                                  &command_rows::drop_bar_row,
                                  &command_rows::press_support_row,
                                  &command_rows::wire_size_row,
                                  &command_rows::reading_row,
                                  &command_rows::crown_gap_row,
                                  &command_rows::cause_row,
                                  &command_rows::stands_low_row,
                                  &command_rows::last_fret_row,
                                  &command_rows::neck_row,
                                  &command_rows::reseated_row,
                                  &command_rows::glued_row,
                                  &command_rows::levelled_row,
                                  &command_rows::define_machine_row,
                                  &command_rows::change_machine_row,
                                  &command_rows::drop_machine_row,
                                  &command_rows::machine_down_row,
                                  &command_rows::machine_up_row,
                                  &command_rows::stage_machine_row,
                                  &command_rows::stage_minutes_row,
                                  &command_rows::book_row,
                                  &command_rows::cancel_booking_row,
                                  &command_rows::start_row,
                                  &command_rows::stop_row,
                                  &command_rows::own_hours_row,
                                  &command_rows::day_off_row,
                                  &command_rows::day_on_row,
                                  &command_rows::reopen_day_row,
                                  &command_rows::priority_row,
                                  &command_rows::after_row,
                                  &command_rows::look_again_row,
                                  &command_rows::ordered_row,
                                  &command_rows::arrived_row,
                                  &command_rows::order_promised_row,
                                  &command_rows::cancel_order_row,
                                  &command_rows::define_supplier_row,
                                  &command_rows::change_supplier_row,
                                  &command_rows::drop_supplier_row,
                                  &command_rows::forget_not_understood_row,
                                  &command_rows::undo_row};

template <class Rows>
auto named(const Rows& rows, std::string_view name) -> typename Rows::value_type {
  const auto at = std::find_if(rows.begin(), rows.end(), [&](const auto* row) { return row->name == name; });
  return at == rows.end() ? nullptr : *at;
}

} // namespace

std::span<const Question* const> questions() {
  return all_questions;
}
std::span<const Command* const> commands() {
  return all_commands;
}
const Question* question(std::string_view name) {
  return named(all_questions, name);
}
const Command* command(std::string_view name) {
  return named(all_commands, name);
}

} // namespace nutward::shop
